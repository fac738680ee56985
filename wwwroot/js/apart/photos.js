// The pages of photos: one by itself, one laid over another, and one taken from the stand of an earlier one.

import "./again.js";
import "./over.js";
import "./photo-viewer.js";
