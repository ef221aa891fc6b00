// Must be refused: the misuse compiles.
// must-say: anything
int x = 0;
