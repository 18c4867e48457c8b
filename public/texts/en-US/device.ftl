# What is chosen for this device: languages, numbers and dates.

this-device = This device
about = These choices stay on this device. Your books stay the same.
language = Language
counter-language = Counter language
as-in-browser = Same as browser
owners-language = Owner’s language
same-language = Same as above
numbers-and-dates = Numbers and dates
written-like = Example: { $sample }
language-not-here = This device does not have { $language } yet. Connect once to get it.
laptop-spacing = Laptop spacing
roomy = Roomy
compact = Compact
