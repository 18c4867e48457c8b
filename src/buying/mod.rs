//! Buying: what suppliers quote, what their prices move, what weighings say, what is to be bought,
//! and what is known of ingredients before anyone has weighed them.

pub mod buying_list;
pub mod figures_to_check;
pub mod price_watch;
pub mod quotes;
pub mod starter;
pub mod yield_log;
