// Where the words of a search stand, marked for display.

#include <algorithm>
#include <map>

#include "indexer/store/rows_of_photos.h"
#include "indexer/store/search_table.h"
#include "indexer/store/search_words.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr char mark_begin = '\x02';
constexpr char mark_end = '\x03';
constexpr std::size_t most_bytes_before = 40;
constexpr std::size_t most_bytes_behind = 60;

struct Range {
    std::size_t begin = 0;
    std::size_t end = 0;
};

struct MarkedText {
    std::string text;
    std::vector<Range> marks;
};

using RowTexts = std::map<std::int64_t, MarkedText>;

// What FTS5 marked, apart from the marks. A record may hold the signs of the marks itself.
MarkedText without_marks(std::string_view highlighted) {
    MarkedText result;
    std::optional<std::size_t> begin;
    for (const char c : highlighted) {
        if (c == mark_begin) {
            begin = result.text.size();
        } else if (c == mark_end) {
            if (begin) result.marks.push_back({*begin, result.text.size()});
            begin.reset();
        } else {
            result.text += c;
        }
    }
    return result;
}

std::string ascii_lower(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return text;
}

MarkedText with_marks(const std::string& text, const std::string& word) {
    MarkedText result{text, {}};
    const std::string lower = ascii_lower(text);
    const std::string wanted = ascii_lower(word);
    for (std::size_t at = lower.find(wanted); at != std::string::npos;
         at = lower.find(wanted, at + wanted.size())) {
        result.marks.push_back({at, at + wanted.size()});
    }
    return result;
}

void add_marks(RowTexts& texts, std::int64_t row, MarkedText marked) {
    const auto [place, is_new] = texts.try_emplace(row, marked);
    if (is_new) return;
    auto& marks = place->second.marks;
    marks.insert(marks.end(), marked.marks.begin(), marked.marks.end());
    std::ranges::sort(marks, {}, &Range::begin);
}

// The texts of these rows of the index in which a word is found.
RowTexts marked_texts(Database& database, const std::vector<std::int64_t>& rows,
                      std::string_view words) {
    RowTexts texts;
    for (const WordQuery& anywhere : word_queries(words)) {
        const WordQuery query = among(database, anywhere, rows);
        const char* text = query.by_index ? "highlight(words, 0, char(2), char(3))" : "text";
        Statement statement(database, std::string("SELECT rowid, ") + text + " FROM words WHERE " +
                                          query.condition);
        statement.with(query.value);
        while (statement.step()) {
            std::int64_t row = 0;
            std::string found;
            statement.read(row, found);
            add_marks(texts, row,
                      query.by_index ? without_marks(found) : with_marks(found, query.value));
        }
    }
    return texts;
}

bool continues(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// The part of the first line with a mark that is shown: the line, cut where it is long.
Range shown_part(const MarkedText& marked) {
    const std::string& text = marked.text;
    const Range first = marked.marks.front();
    const std::size_t line_end = std::min(text.find('\n', first.end), text.size());
    const std::size_t before = text.rfind('\n', first.begin);
    Range part{first.begin == 0 || before == std::string::npos ? 0 : before + 1, line_end};
    if (first.begin - part.begin > most_bytes_before) {
        part.begin = first.begin - most_bytes_before;
        while (continues(text[part.begin])) ++part.begin;
    }
    if (part.end - first.end > most_bytes_behind) {
        part.end = first.end + most_bytes_behind;
        while (continues(text[part.end])) --part.end;
    }
    return part;
}

std::vector<TextPiece> pieces_of(const MarkedText& marked) {
    constexpr const char* left_out = "…";
    const std::string& text = marked.text;
    const Range part = shown_part(marked);
    std::vector<TextPiece> pieces;
    const auto add = [&](std::size_t begin, std::size_t end, bool mark) {
        if (begin < end) pieces.push_back({text.substr(begin, end - begin), mark});
    };
    if (part.begin > 0 && text[part.begin - 1] != '\n') pieces.push_back({left_out, false});
    std::size_t at = part.begin;
    for (const Range& mark : marked.marks) {
        if (mark.begin < at || mark.end > part.end) continue;
        add(at, mark.begin, false);
        add(mark.begin, mark.end, true);
        at = mark.end;
    }
    add(at, part.end, false);
    if (part.end < text.size() && text[part.end] != '\n') pieces.push_back({left_out, false});
    return pieces;
}

}  // namespace

std::vector<std::vector<FoundText>> SearchTable::found_texts(std::span<const PhotoId> photos,
                                                             std::string_view words) {
    RowsOfPhotos rows = rows_of(*database_, photos);
    const RowTexts texts = marked_texts(*database_, all_of(rows), words);
    std::vector<std::vector<FoundText>> found;
    for (const PhotoId photo : photos) {
        auto& own = found.emplace_back();
        for (const std::int64_t row : rows[photo]) {
            const auto text = texts.find(row);
            if (text == texts.end() || text->second.marks.empty()) continue;
            own.push_back({kind_of_row(row), pieces_of(text->second)});
        }
    }
    return found;
}

}  // namespace quarterturn
