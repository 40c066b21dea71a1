// What a card does when it is tapped.
