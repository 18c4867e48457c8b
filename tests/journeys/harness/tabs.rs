//! Several tabs of one browser, and ways to leave them.

use super::Journey;

impl Journey {
    /// Opens the app in a further tab, which becomes the one that is used.
    pub async fn open_another_tab(&self) {
        self.browser().open_tab().await;
        self.open().await;
    }

    /// The same, at the app's address with something behind it, such as "?a"; returns before the app has opened.
    pub async fn open_another_tab_at(&self, behind: &str) {
        self.browser().open_tab().await;
        self.client().goto(&format!("{}{behind}", self.address())).await.expect("the page loads");
    }

    /// Closes the tab that is used, and uses the first.
    pub async fn close_tab(&self) {
        self.browser().close_tab().await;
    }

    /// Loads the page anew, as a person does.
    pub async fn load_again(&self) {
        self.client().execute("location.reload()", Vec::new()).await.expect("the page loads anew");
    }

    /// Uses the tab that was opened so many after the first.
    pub async fn use_tab(&self, index: usize) {
        self.browser().use_tab(index).await;
    }
}
