#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/photo_list.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/search.h"

namespace quarterturn {
namespace {

Reply list(Session& session, const SearchOptions& options) {
    const auto photos = search_photos(session.library(), search_from(session.library(), options));
    const Names names(session.library());
    std::vector<std::vector<std::string>> rows;
    for (const Photo& photo : photos) rows.push_back(photo_cells(photo, names));
    Reply reply{columns(rows), {{"photos", list_json(photos, names)}}};
    reply.lines.push_back(count_text(photos.size(), "photo") + '.');
    return reply;
}

}  // namespace

void add_photos_command(CommandSet& commands) {
    const auto options = std::make_shared<SearchOptions>();
    auto command = commands.add(
        {"photos", "Lists photos in the order of time.", "qturn photos --sitting 4 --untagged"},
        [options](Session& session) { return list(session, *options); });
    command.option("--look LOOK", options->look, "Only those of this look");
    command.option("--sitting NUMBER", options->sitting, "Only those of this sitting");
    command.option("--client CLIENT", options->client,
                   "Only those of her sittings and looks, or that show her");
    command.flag("--unplaced", options->unplaced, "Only those in no sitting");
    command.flag("--untagged", options->untagged, "Only those without an angle or a stage");
    command.flag("--flawed", options->flawed, "Only those with a flaw");
}

}  // namespace quarterturn
