"""The grammar of expressions: sums of products of things, read by descent and kept within bounds."""

from jobcards.definition.syntax.tokens import Misread, Token, tokens
from jobcards.definition.syntax.tree import Amount, Call, Name, Negative, Pair, Tree

LONGEST, DEEPEST, MOST_PIECES = 300, 40, 200


def read(text: str, unit: str) -> Tree:
    """The tree of an expression; lengths in `unit` ("in" or "mm"). Raises Misread."""
    if len(text) > LONGEST:
        raise Misread(0, f"the expression is longer than {LONGEST} characters", "split it up with named sizes")
    return Reader(tokens(text, unit)).whole()


class Reader:
    """Reads tokens one by one; each method reads one thing of the grammar."""

    def __init__(self, words: list[Token]) -> None:
        self.words = words
        self.next = 0
        self.depth = 0
        if len(words) > MOST_PIECES:
            raise Misread(words[-1].offset, "the expression has too many pieces", "split it up with named sizes")

    @property
    def word(self) -> Token:
        return self.words[self.next]

    def take(self) -> Token:
        self.next += 1
        return self.words[self.next - 1]

    def at(self, *signs: str) -> bool:
        return self.word.kind == "sign" and self.word.text in signs

    def whole(self) -> Tree:
        """The whole expression, to its end."""
        tree = self.sum()
        if self.word.kind != "end":
            raise self.misread_between()
        return tree

    def misread_between(self) -> Misread:
        """Two things stand side by side with no sign between."""
        word, before = self.word, self.words[self.next - 1]
        if word.text == ")":
            return Misread(word.offset, "a “)” closes nothing", "leave it out, or open it with “(”")
        if word.text == ",":
            return Misread(word.offset, "a comma stands outside a formula", "write a decimal point, or one value only")
        return Misread(
            word.offset, f"no sign stands between “{before.text}” and “{word.text}”", "write + - * or / between them"
        )

    def sum(self) -> Tree:
        """Products with + and - between."""
        tree = self.product()
        while self.at("+", "-"):
            sign = self.take()
            tree = Pair(sign.text, tree, self.product(), sign.offset)
        return tree

    def product(self) -> Tree:
        """Things with * and / between."""
        tree = self.signed()
        while self.at("*", "/"):
            sign = self.take()
            tree = Pair(sign.text, tree, self.signed(), sign.offset)
        return tree

    def signed(self) -> Tree:
        """A thing with a minus or plus before it, or without."""
        self.depth += 1
        if self.depth > DEEPEST:
            raise Misread(self.word.offset, "the expression is nested too deep", "split it up with named sizes")
        if self.at("-", "+"):
            sign = self.take()
            of = self.signed()
            tree = Negative(of, sign.offset) if sign.text == "-" else of
        else:
            tree = self.thing()
        self.depth -= 1
        return tree

    def thing(self) -> Tree:
        """A number, a size, a formula or something in parentheses."""
        word = self.take()
        if word.kind == "number":
            return Amount(word.value, word.shape, word.offset)
        if word.kind == "formula":
            return Call(word.text, self.arguments(), word.offset)
        if word.kind == "name":
            return Name(word.text, word.offset)
        if word.text == "(":
            tree = self.sum()
            self.close(word)
            return tree
        self.next -= 1
        if word.kind == "end" and self.next == 0:
            raise Misread(0, "nothing is written here", "write a number or an expression of sizes")
        if word.kind == "end":
            raise Misread(word.offset, "the expression ends too soon", "write what follows the last sign")
        raise Misread(
            word.offset, f"a number or a name is missing before “{word.text}”", "write it, or leave the sign out"
        )

    def arguments(self) -> tuple[Tree, ...]:
        """What stands in the parentheses of a formula."""
        opening = self.take()
        found = [self.sum()]
        while self.at(","):
            self.take()
            found.append(self.sum())
        self.close(opening)
        return tuple(found)

    def close(self, opening: Token) -> None:
        """The parenthesis that closes an opening one."""
        if not self.at(")"):
            if self.word.kind == "end":
                raise Misread(opening.offset, "a “(” is not closed", "write the missing “)”")
            raise self.misread_between()
        self.take()
