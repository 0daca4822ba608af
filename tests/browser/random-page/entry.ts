import { openInFrame } from "./pane-frame";
import { runSequences } from "./sequences";

/** The outer page holds the workbooks and a user's hands; the pane stands in frames, which can be loaded anew. */
if (window.parent === window) Object.assign(window, { runSequences });
else openInFrame();
