#include "indexer/store/word_letters.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <array>
#include <memory>
#include <new>
#include <string>

#include "indexer/store/text_words.h"

namespace quarterturn {
namespace {

class Unicode61 {
  public:
    explicit Unicode61(fts5_api* api) {
        void* context = nullptr;
        if (api->xFindTokenizer(api, "unicode61", &context, &methods_) != SQLITE_OK) return;
        std::array<const char*, 2> options{"remove_diacritics", "2"};
        if (methods_.xCreate(context, options.data(), options.size(), &made_) != SQLITE_OK)
            made_ = nullptr;
    }
    ~Unicode61() {
        if (made_) methods_.xDelete(made_);
    }
    Unicode61(const Unicode61&) = delete;
    Unicode61& operator=(const Unicode61&) = delete;

    bool is_there() const { return made_ != nullptr; }

    template <class... Values>
    int tokenize(Values... values) const {
        return methods_.xTokenize(made_, values...);
    }

  private:
    fts5_tokenizer methods_{};
    Fts5Tokenizer* made_ = nullptr;
};

using TakeWord = int (*)(void*, int, const char*, int, int, int);

struct Taker {
    void* context;
    TakeWord take;
};

int take_plain(void* taker, int flags, const char* word, int bytes, int begin, int end) noexcept
    try {
    const auto [context, take] = *static_cast<const Taker*>(taker);
    const std::string plain = plain_letters({word, static_cast<std::size_t>(bytes)});
    return take(context, flags, plain.data(), static_cast<int>(plain.size()), begin, end);
} catch (const std::bad_alloc&) {
    return SQLITE_NOMEM;
} catch (...) {
    return SQLITE_ERROR;
}

Unicode61* tokenizer_in(Fts5Tokenizer* made) {
    return reinterpret_cast<Unicode61*>(made);  // NOLINT: as FTS5 has it
}

int create(void* api, const char** /*options*/, int /*count*/, Fts5Tokenizer** made) {
    std::unique_ptr<Unicode61> unicode61(new (std::nothrow) Unicode61(static_cast<fts5_api*>(api)));
    if (!unicode61) return SQLITE_NOMEM;
    if (!unicode61->is_there()) return SQLITE_ERROR;
    *made = reinterpret_cast<Fts5Tokenizer*>(unicode61.release());  // NOLINT: as FTS5 has it
    return SQLITE_OK;
}

void remove(Fts5Tokenizer* made) {
    const std::unique_ptr<Unicode61> unicode61(tokenizer_in(made));
}

int tokenize(Fts5Tokenizer* made, void* context, int flags, const char* text, int bytes,
             TakeWord take) {
    Taker taker{context, take};
    return tokenizer_in(made)->tokenize(static_cast<void*>(&taker), flags, text, bytes, take_plain);
}

// As FTS5 hands it out; null where it is not there.
fts5_api* api_of(sqlite3* database) {
    fts5_api* api = nullptr;
    sqlite3_stmt* asked = nullptr;
    if (sqlite3_prepare_v2(database, "SELECT fts5(?)", -1, &asked, nullptr) == SQLITE_OK) {
        sqlite3_bind_pointer(asked, 1, static_cast<void*>(&api), "fts5_api_ptr", nullptr);
        sqlite3_step(asked);
    }
    sqlite3_finalize(asked);
    return api;
}

}  // namespace

void know_word_letters(SQLite::Database& database) {
    fts5_api* api = api_of(database.getHandle());
    fts5_tokenizer methods{.xCreate = create, .xDelete = remove, .xTokenize = tokenize};
    if (api == nullptr || api->xCreateTokenizer(api, "plain_letters", static_cast<void*>(api),
                                                &methods, nullptr) != SQLITE_OK) {
        throw SQLite::Exception("SQLite's full-text search (FTS5) cannot be used.");
    }
}

}  // namespace quarterturn
