"""Operations on round holes, whatever machine makes them: with what, how deep, how fast, and what to look out for."""
