//! Several tabs of one browser.

use super::Journey;

impl Journey {
    /// Opens the app in a further tab, which becomes the one that is used.
    pub async fn open_another_tab(&self) {
        let tab = self.client().new_window(true).await.expect("a new tab");
        self.client().switch_to_window(tab.handle).await.expect("the tab is used");
        self.open().await;
    }

    /// Uses the tab that was opened so many after the first.
    pub async fn use_tab(&self, index: usize) {
        let tabs = self.client().windows().await.expect("the tabs");
        let tab = tabs.get(index).expect("a tab of this number").clone();
        self.client().switch_to_window(tab).await.expect("the tab is used");
    }
}
