// All scripts. Each looks for the part of the page it serves. Everything but the microphone works without them.

import "./bench-swap.js";
import "./close.js";
import "./forms.js";
import "./hands-free.js";
import "./photo.js";
import "./say.js";
import "./stream.js";
