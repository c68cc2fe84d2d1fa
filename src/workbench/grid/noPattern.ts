/** In place of the grid library's hyphenation patterns, for sixty languages and many megabytes: a sheet hyphenates nothing. */
export {};
