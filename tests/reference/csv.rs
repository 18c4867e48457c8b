//! Reads the data files: comma-separated, quoted where a value has a comma (RFC 4180), `#` lines
//! telling the source.

use std::collections::BTreeMap;

/// A row: each value by its column's name.
pub type Row = BTreeMap<String, String>;

/// The rows of a file; the file must name its source before them.
pub fn rows(file: &str) -> Vec<Row> {
    let mut told = file.lines().take_while(|line| line.starts_with('#'));
    assert!(told.any(|line| line.starts_with("# source")), "a data file names its source");
    let mut lines = file.lines().filter(|line| !line.starts_with('#'));
    let names = values(lines.next().expect("a line of column names"));
    let row = |line| {
        let values = values(line);
        assert_eq!(values.len(), names.len(), "{line:?}");
        names.iter().cloned().zip(values).collect()
    };
    lines.map(row).collect()
}

fn values(line: &str) -> Vec<String> {
    let mut values = vec![String::new()];
    let mut quoted = false;
    for sign in line.chars() {
        match sign {
            '"' => quoted = !quoted,
            ',' if !quoted => values.push(String::new()),
            sign => values.last_mut().expect("a value is begun").push(sign),
        }
    }
    values
}
