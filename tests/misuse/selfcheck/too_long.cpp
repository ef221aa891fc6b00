// must-say: not_declared
// must-be-short
#ifdef MISUSE
int part_0 = not_declared_0;
int part_1 = not_declared_1;
int part_2 = not_declared_2;
int part_3 = not_declared_3;
int part_4 = not_declared_4;
int part_5 = not_declared_5;
int part_6 = not_declared_6;
int part_7 = not_declared_7;
int part_8 = not_declared_8;
int part_9 = not_declared_9;
int part_10 = not_declared_10;
int part_11 = not_declared_11;
int part_12 = not_declared_12;
#else
int part_0 = 0;
int part_1 = 1;
int part_2 = 2;
int part_3 = 3;
int part_4 = 4;
int part_5 = 5;
int part_6 = 6;
int part_7 = 7;
int part_8 = 8;
int part_9 = 9;
int part_10 = 10;
int part_11 = 11;
int part_12 = 12;
#endif
