#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/portfolio/candidates.h"
#include "indexer/portfolio/export.h"
#include "indexer/store/library_settings.h"
#include "indexer/worker/confined.h"
#include "ui/painter/line_on_picture.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct PortfolioOptions {
    Texts photos;
    std::string selection;
    std::string use;
    std::string to;
    Text size;
    Text shape;
    std::optional<int> quality;
    bool line = false;
    std::string caption;
    bool no_data_mining = false;
};

ExportShape shape_from(const std::string& text) {
    if (const auto shape = parse_export_shape(text)) return *shape;
    throw WrongUse("'" + text + "' is no shape. Known are whole, square, 4:5 and 9:16.");
}

std::optional<int> size_from(const Text& text, Use use) {
    if (!text) return usual_long_edge(use);
    if (*text == "all") return std::nullopt;
    const int pixels = number_from(*text, *text);
    if (pixels > 0) return pixels;
    throw WrongUse("A picture has at least one pixel: name the long edge, as in --size 2160.");
}

ExportWishes export_wishes(Library& library, const PortfolioOptions& options) {
    ExportWishes wishes;
    wishes.use = use_from(options.use);
    wishes.folder = options.to;
    wishes.long_edge = size_from(options.size, wishes.use);
    if (options.shape) wishes.shape = shape_from(*options.shape);
    wishes.quality = jpeg_quality_from(options.quality, usual_export_quality);
    if (options.line) wishes.line = business_words(library.settings());
    if (options.line && wishes.line.empty()) {
        throw WrongUse("No business name or line is set: qturn settings 'business name' NAME");
    }
    wishes.caption = options.caption;
    wishes.no_data_mining = options.no_data_mining;
    return wishes;
}

std::vector<Photo> photos_to_send(Library& library, const PortfolioOptions& options) {
    if (options.selection.empty() == options.photos.empty()) {
        throw WrongUse("Name photos, or --selection NAME.");
    }
    if (options.selection.empty()) return find_photos(library, options.photos);
    return photos_in(library, find_selection(library, options.selection));
}

void add_gone(Reply& reply, const PhotoGone& gone) {
    const std::string& name = gone.photo.file.name;
    json each = short_json(gone.photo);
    each["against"] = gone.against;
    each["doubts"] = gone.doubts;
    each["flawed"] = gone.flawed;
    each["problem"] = gone.problem.empty() ? json() : json(gone.problem);
    each["credit_line"] = gone.credit_line;
    each["export"] = gone.exported ? to_json(*gone.exported) : json();
    reply.data["photos"].push_back(std::move(each));
    if (gone.exported) {
        reply.lines.push_back(name + ": " + gone.exported->file);
        if (!gone.credit_line.empty()) {
            reply.lines.push_back("  Beside it must stand: " + gone.credit_line);
        }
        for (const std::string& doubt : gone.doubts) reply.lines.push_back("  " + doubt);
        if (!gone.flawed.empty()) reply.lines.push_back("  " + gone.flawed);
    } else if (!gone.problem.empty()) {
        reply.lines.push_back(name + " was not written: " + gone.problem);
    } else {
        reply.lines.push_back(name + " stays here:");
        for (const std::string& words : gone.against) reply.lines.push_back("  " + words);
    }
}

Reply export_as_told(Session& session, const PortfolioOptions& options) {
    Library& library = session.library();
    const ExportWishes wishes = export_wishes(library, options);
    const auto photos = photos_to_send(library, options);
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto all =
        export_photos(library, *decoder, draw_line_on_picture, photos, wishes, local_now());
    Reply reply{{}, {{"use", word(wishes.use)}, {"photos", json::array()}}};
    std::size_t written = 0;
    for (const PhotoGone& gone : all) {
        add_gone(reply, gone);
        written += gone.exported ? 1 : 0;
    }
    reply.lines.push_back("Written: " + count_text(written, "picture") + " of " +
                          std::to_string(all.size()) + ".");
    reply.lines.emplace_back(consent_caution);
    reply.data["written"] = written;
    reply.data["caution"] = consent_caution;
    if (written < all.size()) {
        reply.outcome = written == 0 ? Outcome::failed : Outcome::needs_attention;
    }
    return reply;
}

}  // namespace

void add_portfolio_commands(CommandSet& commands) {
    commands.group("portfolio", "Photos on their way out, as far as those shown allow it.");
    const auto options = std::make_shared<PortfolioOptions>();
    auto command = commands.add(
        {"portfolio export",
         "Writes new pictures of the photos that may go, for one use, and notes them in the "
         "ledger. "
         "They tell nothing of where, when or with what they were taken.",
         "qturn portfolio export IMG_0012.jpg 14-18 --for website --to ~/website --shape 4:5"},
        [options](Session& session) { return export_as_told(session, *options); });
    command.optional_argument("PHOTOS", options->photos,
                              "By name, number, numbers from to, or SHA-256");
    command.option("--selection NAME", options->selection, "Those of a selection, in its order");
    command.required_option("--for USE", options->use,
                            "own record, shown in consultation, website, social media, print, "
                            "competition or teaching");
    command.required_option("--to FOLDER", options->to, "Where to; made when it is not there");
    command.option("--size PIXELS", options->size,
                   "The long edge at most, or all; 2160 unless named, all for print and "
                   "competition");
    command.option("--shape SHAPE", options->shape,
                   "whole (unless named), square, 4:5 or 9:16, cut around the head");
    command.option("--quality NUMBER", options->quality, "Of the JPEG, 1 to 100; 88 unless named");
    command.flag("--line", options->line, "Draw your business name and line at the foot");
    command.option("--caption TEXT", options->caption,
                   "What the picture says of itself; look family and angle unless named");
    command.flag("--no-data-mining", options->no_data_mining,
                 "Say in it that it may not be used to train machines");
}

}  // namespace quarterturn
