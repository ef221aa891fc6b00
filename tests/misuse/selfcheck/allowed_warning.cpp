// Must be refused: a control gives a warning.
int forgets_to_return() {}
