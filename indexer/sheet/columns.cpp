#include "indexer/sheet/columns.h"

namespace quarterturn {
namespace {

constexpr double near_zero = 1e-6;
constexpr double kept_whole = 0.4;   // of the column's height: less is not broken
constexpr double search_step = 0.4;  // mm

bool starts_letter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
}
bool is_space(char byte) {
    return byte == ' ' || byte == '\n';
}

// Where the text may be broken: behind each space, or before each letter (UTF-8).
std::vector<std::size_t> breaks_of(const std::string& text, bool within_words) {
    std::vector<std::size_t> breaks;
    for (std::size_t i = 1; i < text.size(); ++i) {
        const bool here = within_words ? starts_letter(text[i]) : is_space(text[i - 1]);
        if (here) breaks.push_back(i);
    }
    return breaks;
}

std::string trimmed(std::string_view text) {
    while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
    while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
    return std::string(text);
}

class Filler {
  public:
    Filler(TextRuler& ruler, std::deque<Paragraph> paragraphs, const Columns& columns)
        : ruler_(ruler), columns_(columns) {
        result_.rest = std::move(paragraphs);
    }

    FilledColumns fill() {
        for (column_ = 0; column_ < columns_.count && !result_.rest.empty(); ++column_) {
            used_ = 0;
            while (!result_.rest.empty() && put_next()) {
            }
        }
        return std::move(result_);
    }

  private:
    double height_of(const TextItem& text) {
        return ruler_.height_mm(text.text, text.points, text.bold, columns_.width);
    }

    double line_of(const TextItem& text) {
        return ruler_.height_mm("X", text.points, text.bold, columns_.width);
    }

    double gap_of(const Paragraph& paragraph) const {
        return used_ == 0 ? 0 : paragraph.gap_before;
    }
    bool within(double height) const { return height <= columns_.height + near_zero; }

    // What must stand in this column below a heading, with the gap above it: further headings, and
    // what follows them, or a line of that if it is long.
    double follower() {
        double below = 0;
        for (std::size_t i = 1; i < result_.rest.size(); ++i) {
            const Paragraph& next = result_.rest[i];
            const double height = height_of(next.text);
            const bool whole = next.heading || height <= kept_whole * columns_.height;
            below += next.gap_before + (whole ? height : line_of(next.text));
            if (!next.heading) break;
        }
        return below;
    }

    // Puts the next paragraph, or as much of it as there is room for. No: the column is full.
    bool put_next() {
        Paragraph& next = result_.rest.front();
        const double top = used_ + gap_of(next);
        const double height = height_of(next.text);
        if (within(top + height + (next.heading ? follower() : 0))) {
            put(next.text, top, height);
            result_.rest.pop_front();
            return true;
        }
        const bool short_enough = height <= kept_whole * columns_.height;
        const bool no_line = !within(top + line_of(next.text));
        if (used_ > 0 && (next.heading || short_enough || no_line)) return false;
        put_beginning(next, top);
        return false;
    }

    void put_beginning(Paragraph& next, double top) {
        TextItem beginning = next.text;
        auto [first, second] = split_text(ruler_, next.text, columns_.width, columns_.height - top);
        beginning.text = std::move(first);
        put(beginning, top, height_of(beginning));
        if (second.empty())
            result_.rest.pop_front();
        else
            next.text.text = std::move(second);
    }

    void put(TextItem text, double top, double height) {
        text.box = {columns_.x + column_ * (columns_.width + columns_.gutter), columns_.y + top,
                    columns_.width, height};
        used_ = top + height;
        result_.height = std::max(result_.height, used_);
        result_.texts.push_back(std::move(text));
    }

    TextRuler& ruler_;
    const Columns& columns_;
    FilledColumns result_;
    int column_ = 0;
    double used_ = 0;
};

}  // namespace

std::pair<std::string, std::string> split_text(TextRuler& ruler, const TextItem& text, double width,
                                               double height) {
    const auto fits = [&](std::size_t end) {
        const std::string beginning = trimmed(std::string_view(text.text).substr(0, end));
        return ruler.height_mm(beginning, text.points, text.bold, width) <= height + near_zero;
    };
    std::vector<std::size_t> breaks = breaks_of(text.text, false);
    if (breaks.empty() || !fits(breaks.front())) breaks = breaks_of(text.text, true);
    breaks.push_back(text.text.size());
    const auto first_not = std::ranges::partition_point(breaks, fits);
    const std::size_t end = first_not == breaks.begin() ? breaks.front() : *(first_not - 1);
    return {trimmed(std::string_view(text.text).substr(0, end)),
            trimmed(std::string_view(text.text).substr(end))};
}

FilledColumns fill_columns(TextRuler& ruler, std::deque<Paragraph> paragraphs,
                           const Columns& columns) {
    return Filler(ruler, std::move(paragraphs), columns).fill();
}

std::optional<double> balanced_height(TextRuler& ruler, const std::deque<Paragraph>& paragraphs,
                                      Columns columns, double most) {
    const auto fits = [&](double height) {
        columns.height = height;
        const FilledColumns filled = fill_columns(ruler, paragraphs, columns);
        return filled.rest.empty() && filled.height <= height + near_zero;
    };
    if (!fits(most)) return std::nullopt;
    double low = 0;
    double high = most;
    while (high - low > search_step) {
        const double middle = (low + high) / 2;
        (fits(middle) ? high : low) = middle;
    }
    return high;
}

}  // namespace quarterturn
