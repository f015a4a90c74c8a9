// SPDX-License-Identifier: Apache-2.0
// bwip-js (MIT) asked by a test. Standard input: one job a line.
//   parse TEXT           -> "yes", or "no" and why: GS1 element strings in brackets, checked by its table of application identifiers
//   print KIND FILE TEXT -> a picture at FILE (PNG), then "yes"
"use strict";
const bwip = require(process.argv[2] + "/node_modules/bwip-js");
const fs = require("fs");
const lines = fs.readFileSync(0, "utf8").split("\n").filter(l => l.length > 0);
(async () => {
    for (const line of lines) {
        const words = line.split(" ");
        try {
            if (words[0] === "parse") {
                bwip.raw({ bcid: "gs1datamatrix", text: line.slice(6) });
            } else {
                const text = words.slice(3).join(" ");
                fs.writeFileSync(words[2], await bwip.toBuffer({ bcid: words[1], text, scale: 6, paddingwidth: 24, paddingheight: 24, backgroundcolor: "FFFFFF" }));
            }
            console.log("yes");
        } catch (error) {
            console.log("no " + String(error.message || error).replace(/\s+/g, " "));
        }
    }
})();
