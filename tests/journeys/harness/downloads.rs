//! Files that the page offers to save.

use std::fs;

use super::{Journey, not_yet};

impl Journey {
    /// Waits until a file of this name is saved whole, and takes it out of the folder.
    pub async fn take_download(&self, name: &str) -> Vec<u8> {
        let folder = self.browser().downloads();
        let path = folder.join(name);
        self.until(&format!("the file {name:?} to be saved"), async || {
            let others = fs::read_dir(&folder)?.flatten().any(|file| file.path() != path);
            // A file takes its name only once it is whole; until then a part of it lies beside.
            if others || !path.exists() {
                return Err(not_yet());
            }
            let bytes = fs::read(&path)?;
            fs::remove_file(&path)?;
            Ok(bytes)
        })
        .await
    }
}
