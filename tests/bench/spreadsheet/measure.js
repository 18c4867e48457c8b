// Times a spreadsheet engine on a job: sheets, and prices and wages that are set one after another. Runs in
// Node and in a page. Gives milliseconds, and what the sheet said at the start, after every first price,
// and at the end.
function measure(HyperFormula, job) {
    const options = { licenseKey: "gpl-v3" };
    const timed = (run) => {
        const begun = performance.now();
        const value = run();
        return [performance.now() - begun, value];
    };
    const times = { build: [], price: [], wage: [] };
    let engine;
    for (let run = 0; run < job.builds; run += 1) {
        engine?.destroy();
        const [took, built] = timed(() => HyperFormula.buildFromSheets(job.sheets, options));
        times.build.push(took);
        engine = built;
    }
    const sheet = (name) => engine.getSheetId(name);
    const said = () => {
        const rows = engine.getSheetValues(sheet("Offers"));
        return rows.map((row) => job.columns.map((column) => (typeof row[column] === "number" ? row[column] : null)));
    };
    // As an owner types: one cell, one number.
    const set = (name, row, value) => {
        const address = { sheet: sheet(name), row, col: 0 };
        return timed(() => engine.setCellContents(address, value))[0];
    };
    const start = said();
    let first;
    for (const prices of job.rounds) {
        prices.forEach((price, row) => times.price.push(set("Ingredients", row, price)));
        first ??= said();
    }
    for (const wage of job.wages) times.wage.push(set("Settings", 0, wage));
    const end = said();
    engine.destroy();
    return { times, said: [start, first, end] };
}

if (typeof module === "object") module.exports = measure;
