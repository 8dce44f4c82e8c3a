### What is wrong and what to do about it (design §11). Beside a field, or across the top of the screen.

## A typed figure

problem-number-empty = Type a number.
problem-number-none = That is not a number. Type digits, such as 6.5.
problem-number-not-finite = That is not a number a gauge can show.
problem-range = From { $low } to { $high }.
problem-range-above = Too high. Type { $low } to { $high }.
problem-range-below = Too low. Type { $low } to { $high }.
problem-missing = Still missing: { $what }.

## VIN and plate

vin-fits = The check digit fits.
vin-length = A VIN has 17 characters; these are { $count }.
vin-character = A VIN never has an { $character }. Look for 1 or 0.
vin-differs = The check digit is { $there }, { $expected } would fit. Look again. Outside North America that can be right.

## Storage

problem-open-newer = This log was written by version { $version }, newer than this app. It stays as it is. Install the newer app.
problem-folder = The data folder can't be made. Free some space and try again.
problem-full = The phone is full. Nothing was lost; this last step was not saved. Free some space.
problem-read-only = The phone does not let this app write. Nothing was lost; this last step was not saved.
problem-store = The log can't be written. What was saved before is still there. Try again.
problem-session = Where you were could not be saved. Your readings are safe.
problem-entry-from-newer = From a newer version of the app: kept, not shown.

## Photos

problem-photo-damaged = This picture is cut off or damaged. Take it again.
problem-photo-type = This is no JPEG, PNG or WebP picture, and the phone can't read it either.
problem-photo-missing = The photo file is missing. Its entry is kept.

## Reports

problem-report = The report could not be made. The job is safe. Try again.
problem-report-no-space = No room for the report. Free some space and try again.

## Interrupted

problem-gap = The phone slept for { $seconds }. Fewer readings count; the time is right.
