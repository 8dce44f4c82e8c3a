### What is the same in every language: the languages by their own names.

language-en-us = English (US)
language-en-gb = English (UK)
language-de = Deutsch
language-es = Español
language-fr = Français
