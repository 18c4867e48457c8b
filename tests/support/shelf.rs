//! A shelf in memory that is run to its end, and a tab with a book of it open.

use std::cell::RefCell;
use std::rc::Rc;

use brimwright::book::{Book, BookId, Edit};
use brimwright::store::{Backing, Hooks, InMemory, Opened, Shelf};

/// The book of these tests.
pub const ID: BookId = BookId::from_random(0xb1);

/// Does something with the shelf of a storage, to its end.
pub fn run<T: 'static, F: Future<Output = T> + 'static>(
    storage: &InMemory,
    work: impl FnOnce(Shelf<InMemory>) -> F,
) -> T {
    let done = Rc::new(RefCell::new(None));
    let (work, done_by) = (work(Shelf::new(storage.clone())), Rc::clone(&done));
    storage.spawn(async move {
        let result = work.await;
        done_by.replace(Some(result));
    });
    storage.run();
    done.take().expect("the work ends")
}

/// A storage with this book on it, put there at a moment in milliseconds since 1970.
pub fn storage(book: Book, at: u64) -> InMemory {
    let storage = InMemory::default();
    run(&storage, |shelf| async move { shelf.create(ID, &book, at).await }).expect("an empty shelf has room");
    storage
}

/// Opens the book, with the journals of tabs that are gone replayed.
pub fn open(storage: &InMemory) -> (Book, Opened<InMemory>) {
    let (book, mut opened) = run(storage, |shelf| async move { shelf.open(ID).await }).expect("the book opens");
    (opened.replay(book), opened)
}

/// The hooks of a tab that shows `book` and nothing else.
pub fn hooks(book: &Rc<RefCell<Book>>) -> Hooks {
    let apply = || {
        let book = Rc::clone(book);
        move |edit: &Edit| book.borrow_mut().apply(edit).map(drop)
    };
    let (reading, apply_remote, give_up) = (Rc::clone(book), apply(), apply());
    Hooks {
        saving: Box::new(|_| ()),
        book: Box::new(move || reading.borrow().clone()),
        apply_remote: Box::new(apply_remote),
        give_up: Box::new(move |_, edit| give_up(edit)),
        kept: Box::new(|_, _| ()),
    }
}
