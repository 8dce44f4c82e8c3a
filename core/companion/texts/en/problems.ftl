### What is wrong and what to do about it (design §11). Beside a field, or across the top of the screen.

## A typed figure

problem-number-empty = Type a number.
problem-number-none = That is not a number. Type digits, such as 6.5.
problem-number-not-finite = That is not a number a gauge can show.
problem-range = From { $low } to { $high }.
problem-range-above = Too high. Type { $low } to { $high }.
problem-range-below = Too low. Type { $low } to { $high }.
problem-vacuum-above-air = More vacuum than the air here allows: at most { $high }. Is the unit { $unit }?
problem-vacuum-above-scale = Your gauge ends at { $high }.
problem-unit-unknown = The unit { $unit } is not known.
problem-reading-above-start = The vacuum can't rise while nobody pumps. Read again.
problem-missing = Still missing: { $what }.
problem-choose-one = Tap one of them.
problem-text-cut = Too long. It is kept up to here.

## VIN and plate

vin-fits = The check digit fits.
vin-length = A VIN has 17 characters; these are { $count }.
vin-character = A VIN never has an { $character }. Look for 1 or 0.
vin-differs = The check digit is { $there }, { $expected } would fit. Look again. Outside North America that can be right.

## Storage

problem-open-newer = This log was written by version { $version }, newer than this app. It stays as it is. Install the newer app.
problem-open-damaged = The log was damaged. It is kept aside, and what can be read is here.
problem-folder = The data folder can't be made. Free some space and try again.
problem-full = The phone is full. Nothing was lost; this last step was not saved. Free some space.
problem-read-only = The phone does not let this app write. Nothing was lost; this last step was not saved.
problem-store = The log can't be written. What was saved before is still there. Try again.
problem-session = Where you were could not be saved. Your readings are safe.
problem-entry-from-newer = From a newer version of the app: kept, not shown.
problem-bundle-newer = This file comes from version { $version }, newer than this app. Nothing was changed.
problem-bundle-damaged = This file is damaged or no job file. Nothing was changed.

## Photos

problem-photo-too-large = This picture is too large: over { $most } million pixels.
problem-photo-damaged = This picture is cut off or damaged. Take it again.
problem-photo-type = This is no JPEG, PNG or WebP picture.
problem-photo-missing = The photo file is missing. Its entry is kept.
problem-photo-path = This file lies outside the phone's pictures. It was not read.

## Reports

problem-report = The report could not be made. The job is safe. Try again.
problem-report-no-space = No room for the report. Free some space and try again.

## Interrupted

problem-clock = The phone was restarted in between. The time of this hold is not certain.
problem-gap = The phone slept for { $seconds }. Fewer readings count; the time is right.
