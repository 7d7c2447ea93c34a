#pragma once
// How FTS5 tells the words of the search's index apart: as its own unicode61 does, each word in
// plain_letters() (text_words.h), since unicode61 takes accents away from Latin letters only.

namespace SQLite {
class Database;
}

namespace quarterturn {

// Makes the tokenizer "plain_letters" known, without which the index cannot be read. Throws
// SQLite::Exception.
void know_word_letters(SQLite::Database& database);

}  // namespace quarterturn
