// All scripts. Each looks for the part of the page it serves. Everything but the microphone works without them.

import "./audio-file.js";
import "./bench-swap.js";
import "./close.js";
import "./draft.js";
import "./drop-file.js";
import "./end-clock.js";
import "./forms.js";
import "./hands-free.js";
import "./heard.js";
import "./mending.js";
import "./offline.js";
import "./pair.js";
import "./photo.js";
import "./place.js";
import "./room-left.js";
import "./say.js";
import "./sheet-list.js";
import "./stream.js";
import "./sunlight.js";
import "./tick-all.js";
