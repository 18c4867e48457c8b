# What the first screen says, before the rest of the texts is here.

opening = Opening…
part-missing = Part of the app did not arrive. Check your connection, then try again. Your data is safe on this device.

## Types of drinks, and states of a size

type-pressed = Pressed
type-blended = Blended
type-over-ice = Over ice
type-shot = Shot
on-target = On target
below-target = Below target
no-price-yet = No price yet
needs-details = Needs details

## The frame around the screens

app-name = Brimwright
opening-book = Opening your book…
skip-to-content = Skip to content
places = Places
drinks = Drinks
buying = Buying
sizes = Sizes
counter = Counter
book = Book
containers = Containers
sample-data = Sample data
undo-change = Undo: { $change }
redo-change = Redo: { $change }
all-changes = All changes
changes = Changes

## The list of drinks

margin-on-goods = Margin on ingredients and packaging
margin-on-labor = Margin on ingredients, packaging, labor
margin-on-all = Margin on all costs
margin-and-sold = { $margin }, and drinks sold per week
lowest-first = Lowest margin first

all-drinks = All
show-drinks = Show drinks
no-drink-matches = No matches. Try another name, or show all drinks.
add-drink = Add a drink
price-sheet = Price sheet
drink-without-sizes = No sizes yet. Open the drink to add one.
no-price = No price
clear-search = Clear search
first-price-steps = Your first price
price-first-drink = Price your first drink
price-first-drink-about = Four short steps: ingredients, bottle, amounts, price.

## The choice of books

tagline = Cost, size and price your drinks. Works on this device, even offline.
your-books = Your books
start-book = Start new book
start-book-about = Get your first menu price in a few minutes.
look-around = Look around first
look-around-about = Marrowgate Juice Hall has 14 drinks. All names and prices are sample data.
second-demo = See a bar in euros
second-demo-about = Kastanje Saftbar has 8 drinks in milliliters, and deposits. Names, prices and taxes are sample data.
find-other-books = Import or recover
data-stays-here = Your data stays on this device. No sign-up, no tracking.
no-advice = Figures are only as right as what you enter. They are not legal, tax or food-safety advice.
open-now = Open now
damaged-book = Damaged book
new-book-name = My book
sample-book-missing = The sample book did not load. Go online once, then try again.
books-removed = Your browser removed your books. Open your last saved file, or start again.
named-books-removed = Your browser removed these books: { $books }. Open your last saved file, or start again.
deleted-in-other-tab = That book was deleted in another tab. Look under “Deleted books”.

## A new version

version-ready = A new version is ready. Your book stays the same.
update-now = Update now
update-later = Update later
update = Update

## Whether all is saved

saved = Saved
saving = Saving…
not-saved = Not saved
books-not-open = Books unavailable
save-stored-data = Save stored data
show-readable-parts = Show readable parts
open-other-book = Open another book
delete-book = Delete book
go-on-without-saving = Continue without saving
delete-from-device = Delete from device
delete-without-copy = Delete without copy
# Shown before a book is deleted.
book-kept-days = “{ $book }” stays under “Deleted books” for { $days } days. Save a file to keep a copy longer.
damaged-book-kept-days = This book stays under “Deleted books” for { $days } days. Save a file to keep a copy longer.
not-added = “{ $book }” was not added.
not-added-no-room = “{ $book }” was not added. This device is out of space. Delete what you do not need, then try again.
not-deleted = “{ $book }” was not deleted.
damaged-not-deleted = The book was not deleted.
no-room-try-again = This device is out of space. Try again.

## What can go wrong with storage

no-storage = This window cannot save. It may be a private window. What you enter is lost when you close it. Use a regular window.
no-answer = Your books did not open. Nothing was changed. Wait a moment, then try again. If that fails, close every window of your browser.
held-by-older = Another tab has an older version open. Close your other tabs, then reload this page.
newer-books = A newer version of Brimwright saved your books. Nothing was changed. Go online, then reload this page.
newer-version-open = Another tab has a newer version open. This tab no longer saves. Reload this page to go on.
connection-lost = This page lost its link to your saved books. Try again. If that fails, save a copy and reload this page.
no-room = This device is out of space. Your changes are still on the screen. Save a copy, free up space, then try again.
book-removed = Your browser removed this book from the device. Save what you see as a new book.
book-deleted = This book was deleted in another tab. Save what you see as a new book, or close it.
book-moved-on = This book was changed in another tab. Reload this page to see the change.
parts-unreadable = { $parts ->
    [one] 1 part of this book cannot be read.
   *[other] { $parts } parts of this book cannot be read.
}
nothing-deleted = Nothing was changed or deleted. Save the stored data, or show the readable parts.
browser-trouble = Your browser had a problem. Try again, or save a copy.


## What cannot be worked out with numbers

numbers-too-large = These numbers are too large. Check for an extra digit.
zero-not-allowed = Something here is zero and must not be. Check pack sizes, yields and fills.
below-zero-not-allowed = Something here is below zero and must not be. Check for a minus sign.

## Buttons and names that other screens have too

cancel = Cancel
try-again = Try again
undo = Undo
redo = Redo
close = Close
find-drink = Find a drink
