// Photos over the years: one laid over the other, and taking one from the stand of an earlier one.

import "./again.js";
import "./over.js";
