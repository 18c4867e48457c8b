//! Buying: what suppliers quote, what their prices move, what weighings say, what is to be bought.

pub mod buying_list;
pub mod price_watch;
pub mod quotes;
pub mod yield_log;
