#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/portfolio/candidates.h"
#include "indexer/portfolio/gallery.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct GalleryOptions {
    std::string selection;
    std::string to;
    std::string title;
    bool no_data_mining = false;
};

void add_to_gallery_reply(Reply& reply, const PhotoGone& gone) {
    json each = short_json(gone.photo);
    each["against"] = gone.against;
    each["problem"] = gone.problem.empty() ? json() : json(gone.problem);
    each["shown"] = gone.exported.has_value();
    reply.data["photos"].push_back(std::move(each));
    append(reply.lines, gone.doubts);
    if (gone.exported && !gone.flawed.empty()) {
        reply.lines.push_back(gone.photo.file.name + ": " + gone.flawed);
    }
    if (gone.exported) return;
    reply.lines.push_back(gone.photo.file.name +
                          " stays here:" + (gone.problem.empty() ? "" : " " + gone.problem));
    append(reply.lines, gone.against);
    reply.outcome = Outcome::needs_attention;
}

Reply gallery(Session& session, const GalleryOptions& options) {
    refuse_in_library(session, options.to);
    Library& library = session.library();
    const PhotoSelection selection = find_selection(library, options.selection);
    const std::vector<Photo> photos = photos_in(library, selection);
    const auto decoder = make_confined_decoder();
    const Gallery written =
        write_gallery(library, *decoder, photos,
                      {options.to, options.title.empty() ? selection.name : options.title,
                       options.no_data_mining},
                      local_now());
    Reply reply{{},
                {{"page", written.page.empty() ? json() : json(written.page.string())},
                 {"pictures", written.pictures},
                 {"photos", json::array()},
                 {"caution", consent_caution}}};
    for (const PhotoGone& gone : written.photos) add_to_gallery_reply(reply, gone);
    if (written.page.empty()) {
        reply.lines.emplace_back("No gallery was written, since none of its photos may go.");
        reply.outcome = Outcome::failed;
    } else {
        const auto shown = std::ranges::count_if(
            written.photos, [](const PhotoGone& gone) { return gone.exported.has_value(); });
        reply.lines.push_back("Written: " + written.page.string() + ", with " +
                              count_text(static_cast<std::size_t>(shown), "photo") + " in " +
                              count_text(written.pictures, "picture") +
                              " of several sizes, which stand in the ledger.");
    }
    reply.lines.emplace_back(consent_caution);
    return reply;
}

}  // namespace

void add_gallery_command(CommandSet& commands) {
    const auto options = std::make_shared<GalleryOptions>();
    auto command = commands.add(
        {"portfolio gallery",
         "Writes a selection as a gallery for a website: one plain page and its pictures.",
         "qturn portfolio gallery --selection 'Spring page' --to ~/gallery"},
        [options](Session& session) { return gallery(session, *options); });
    command.required_option("--selection NAME", options->selection,
                            "Its photos, in their order, as far as they may be shown on a website");
    command.required_option("--to FOLDER", options->to, "A new or empty folder");
    command.option("--title TEXT", options->title,
                   "What the page is called; the selection's name unless said");
    command.flag("--no-data-mining", options->no_data_mining,
                 "Say in the pictures that they may not be used to train machines");
}

}  // namespace quarterturn
