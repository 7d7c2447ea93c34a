#include "indexer/looks/consent_form.h"

#include <algorithm>

#include "indexer/disk/write_once.h"
#include "indexer/record/date_words.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_wording_bytes = 1 << 20;
constexpr const char* to_fill_in = "______________________________";

void fill_in(std::string& words, std::string_view name, const std::string& value) {
    const std::string filled = value.empty() ? to_fill_in : value;
    for (std::size_t at = words.find(name); at != std::string::npos;
         at = words.find(name, at + filled.size())) {
        words.replace(at, name.size(), filled);
    }
}

std::string filled(std::string_view wording, const FormFacts& facts) {
    std::string words(wording);
    fill_in(words, "{client}", facts.client);
    fill_in(words, "{business}", facts.business);
    fill_in(words, "{contact}", facts.contact);
    fill_in(words, "{date}", facts.date.ok() ? long_date(facts.date) : "");
    return words;
}

std::optional<FormPart> part_alone(std::string_view line) {
    if (line == "[uses]") return FormPart::uses;
    if (line == "[until]") return FormPart::until;
    if (line == "[sign]") return FormPart::sign;
    return std::nullopt;
}

[[noreturn]] void refuse_wording(const Path& file, const std::string& why) {
    throw StoreError(file.string() + " " + why +
                     ": mend it, or move it away and write it anew with qturn consent form "
                     "--write-wording.");
}

class FormReader {
  public:
    void line(std::string_view text) {
        while (!text.empty() && (text.back() == '\r' || text.back() == ' ')) text.remove_suffix(1);
        if (text.empty()) {
            open_ = false;
        } else if (const auto part = part_alone(text)) {
            add(*part, {});
        } else if (text.starts_with("# ")) {
            add(FormPart::heading, text.substr(2));
        } else if (text.starts_with("! ")) {
            add(FormPart::framed, text.substr(2));
            open_ = true;
        } else if (open_) {
            blocks.back().words.append(" ").append(text);
        } else {
            add(FormPart::paragraph, text);
            open_ = true;
        }
    }

    std::vector<FormBlock> blocks;

  private:
    void add(FormPart part, std::string_view words) {
        blocks.push_back({part, std::string(words)});
        open_ = false;
    }

    bool open_ = false;  // whether the next line goes on with the last block
};

void refuse_unless_whole(const Path& file, const std::string& wording) {
    try {
        refuse_unless_text("the consent form", wording);
    } catch (const StoreError&) {
        refuse_wording(file, "is no text (UTF-8)");
    }
    const auto blocks = form_blocks(wording, {});
    if (blocks.empty()) refuse_wording(file, "is empty");
    for (const auto& [part, line] :
         {std::pair(FormPart::uses, "[uses]"), std::pair(FormPart::sign, "[sign]")}) {
        if (std::ranges::find(blocks, part, &FormBlock::part) == blocks.end()) {
            refuse_wording(file, std::string("has no line ") + line);
        }
    }
}

}  // namespace

std::string_view usual_consent_form() {
    return R"form(# May I show photos of your hair?

Name: {client}

I take photos while I do your hair, so that I can make it again. Whether anybody else may see them
is up to you.

# Where may they be shown?

Tick one box in each line. Where you tick nothing, it means no. "Hair only" means that your face
does not show.

[uses]

# For how long?

[until]

# If you change your mind

You can take back your yes at any time, for one line or for all, and need give no reason. Write or
call: {contact}. From then on nothing new is shown, and I take down what I have put up
myself. What others have copied, or what is printed already, may be out of my reach.

# Who keeps what

The photos and this form are kept by {business}, on my own computer. You can see all that I keep
about you, get a copy of it, and have it deleted. Your hair is done just as well if you say no.

# For somebody under 18

A parent or guardian decides and signs, and the young person is asked too.

Age: ____________   Name of the parent or guardian: ______________________________

[sign]

! This form is a starting point. Have it checked against the law of your place before you use it.
)form";
}

std::vector<FormBlock> form_blocks(std::string_view wording, const FormFacts& facts) {
    std::string_view rest = wording;
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (rest.starts_with(byte_order_mark)) rest.remove_prefix(byte_order_mark.size());
    FormReader reader;
    while (!rest.empty()) {
        const auto end = std::min(rest.find('\n'), rest.size());
        reader.line(rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    for (FormBlock& block : reader.blocks) {
        block.by_hand =
            block.part == FormPart::paragraph && block.words.find("____") != std::string::npos;
        block.words = filled(block.words, facts);
    }
    return std::move(reader.blocks);
}

std::string_view use_on_form(Use use) {
    switch (use) {
        case Use::own_record:
            return "Kept to do your hair again";
        case Use::consultation:
            return "Shown to other clients";
        case Use::website:
            return "On my website";
        case Use::social_media:
            return "In social media";
        case Use::print:
            return "In print";
        case Use::competition:
            return "In a competition";
        case Use::teaching:
            return "To teach others";
    }
    return {};
}

std::string consent_form_wording(Library& library) {
    const Path file = library.folder() / consent_form_name;
    if (!library.disk().exists(file)) return std::string(usual_consent_form());
    const Bytes bytes = library.disk().read(file, most_wording_bytes);
    std::string wording(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    refuse_unless_whole(file, wording);
    return wording;
}

Path write_consent_form_wording(Library& library) {
    library.database().refuse_if_replaced();
    const Path file = library.folder() / consent_form_name;
    const std::string_view wording = usual_consent_form();
    write_once(library.disk(), file, std::as_bytes(std::span(wording)));
    return file;
}

}  // namespace quarterturn
