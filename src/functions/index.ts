// Written by `npm run sync` from the specs in src/core; edits here are lost.

import "./loading";
import "./grades";
import "./duties";
import "./heat";
import "./fit";
import "./wear";
import "./teach";
