// node in_node.js FOLDER JOB: measures the spreadsheet engine installed in FOLDER on the job in the file JOB.
const { readFileSync } = require("node:fs");
const { join } = require("node:path");
const { HyperFormula } = require(join(process.argv[2], "node_modules", "hyperformula"));
const measure = require("./measure.js");

console.log(JSON.stringify(measure(HyperFormula, JSON.parse(readFileSync(process.argv[3], "utf8")))));
