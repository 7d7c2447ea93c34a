#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/photo_list.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/search.h"

namespace quarterturn {
namespace {

using FoundTexts = std::vector<FoundText>;

std::string where_text(WordsOf where) {
    switch (where) {
        case WordsOf::photo:
            return "photo";
        case WordsOf::client:
            return "client";
        case WordsOf::wedding:
            return "wedding";
        case WordsOf::sitting:
            return "sitting";
        case WordsOf::look:
            return "look";
        case WordsOf::recipe:
            return "recipe";
    }
    return {};
}

// "recipe: pinned at the *nape*"
std::string found_line(const FoundTexts& texts) {
    if (texts.empty()) return {};
    std::string line = where_text(texts.front().where) + ": ";
    for (const TextPiece& piece : texts.front().pieces) {
        line += piece.marked ? '*' + piece.text + '*' : piece.text;
    }
    return line;
}

nlohmann::json found_json(const FoundTexts& texts) {
    auto list = nlohmann::json::array();
    for (const FoundText& text : texts) {
        auto pieces = nlohmann::json::array();
        for (const TextPiece& piece : text.pieces) {
            pieces.push_back({{"text", piece.text}, {"found", piece.marked}});
        }
        list.push_back({{"where", where_text(text.where)}, {"pieces", pieces}});
    }
    return list;
}

std::string closing_line(std::size_t count) {
    if (count > 0) return count_text(count, "photo") + " found.";
    return "Nothing was found: try fewer words or conditions, or list all with: qturn photos";
}

Reply find(Session& session, const SearchOptions& options) {
    const bool blank = std::ranges::all_of(options.words, [](const std::string& word) {
        return word.find_first_not_of(" \t\n") == std::string::npos;
    });
    if (options == SearchOptions{} || (blank && !options.words.empty())) {
        throw WrongUse(
            "Say what to find: words, or options such as --client. All photos are "
            "listed by: qturn photos");
    }
    Library& library = session.library();
    const PhotoSearch search = search_from(library, options);
    const auto photos = search_photos(library, search);
    std::vector<PhotoId> ids;
    for (const Photo& photo : photos) ids.push_back(photo.id);
    const auto texts = library.search().found_texts(ids, search.words);
    const Names names(library);
    std::vector<std::vector<std::string>> rows;
    auto list = nlohmann::json::array();
    for (std::size_t i = 0; i < photos.size(); ++i) {
        rows.push_back(photo_cells(photos[i], names));
        rows.back().push_back(found_line(texts[i]));
        list.push_back(to_json(photos[i], names));
        list.back()["found_in"] = found_json(texts[i]);
    }
    Reply reply{columns(rows), {{"photos", list}}};
    reply.lines.push_back(closing_line(photos.size()));
    return reply;
}

}  // namespace

void add_find_command(CommandSet& commands) {
    const auto options = std::make_shared<SearchOptions>();
    auto command = commands.add(
        {"find", "Finds photos by words in names, notes and recipes, and by what is known of them.",
         "qturn find leaf comb --client 'Ada Lindqvist' --stage after"},
        [options](Session& session) { return find(session, *options); });
    command.optional_argument("WORDS", options->words,
                              "Each must stand in the photo's name or note, or with its client, "
                              "wedding, sitting, look or recipe; beginnings will do");
    command.option("--client CLIENT", options->client,
                   "Only those of her sittings and looks, or that show her");
    command.option("--from DATE", options->from, "Only those of this day and later");
    command.option("--to DATE", options->to, "Only those of this day and before");
    command.option("--sitting NUMBER", options->sitting, "Only those of this sitting");
    command.option("--look LOOK", options->look, "Only those of this look");
    command.option("--stage STAGE", options->stage, "before, during or after");
    command.option("--angle ANGLE", options->angle, "Where the camera stood, as for qturn tag");
    command.option("--device DEVICE", options->device, "Only those of this camera or phone");
    command.flag("--flawed", options->flawed, "Only those with a flaw");
    command.flag("--not-placed", options->unplaced, "Only those in no sitting");
}

}  // namespace quarterturn
