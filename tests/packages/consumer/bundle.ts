// One function, as an application that needs no more would import it.
import { kg, toLb } from '@windlass/core';

console.log(toLb(kg(20)));
