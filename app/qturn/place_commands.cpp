#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/import_words.h"
#include "app/qturn/say.h"
#include "app/qturn/sort_reply.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/tagging.h"

namespace quarterturn {
namespace {

struct PlaceOptions {
    std::vector<std::string> photos;
    std::string sitting;
    bool nowhere = false;
    bool by_time = false;
};

void refuse_unclear(const PlaceOptions& options) {
    const int ways = static_cast<int>(!options.sitting.empty()) +
                     static_cast<int>(options.nowhere) + static_cast<int>(options.by_time);
    if (ways == 1) return;
    throw WrongUse("Say where the photos belong: --sitting NUMBER, --nowhere or --by-time.");
}

Reply placed(const std::vector<Photo>& photos, const std::string& where,
             const std::vector<RefusedFile>& not_moved) {
    Reply reply{{"Placed " + count_text(photos.size(), "photo") + ' ' + where + "."},
                {{"photos", short_list_json(photos)}, {"not_moved", refused_json(not_moved)}}};
    append(reply.lines, not_moved_lines(not_moved));
    if (!not_moved.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply place(Session& session, const PlaceOptions& options) {
    refuse_unclear(options);
    Library& library = session.library();
    const auto photos = find_photos(library, options.photos);
    if (options.by_time) {
        return placed(photos, "by their time again", leave_to_time(library, ids_of(photos)));
    }
    if (options.nowhere) {
        return placed(photos, "in no sitting",
                      place_by_hand(library, ids_of(photos), std::nullopt));
    }
    const Sitting sitting = find_sitting(library, options.sitting);
    return placed(photos, "in the " + Names(library).sitting(sitting.id),
                  place_by_hand(library, ids_of(photos), sitting.id));
}

}  // namespace

void add_place_commands(CommandSet& commands) {
    commands.add({"sort",
                  "Places each photo in the sitting whose hours it lies in, and suggests before, "
                  "during and after. What you placed by hand stays.",
                  "qturn sort"},
                 [](Session& session) {
                     return sort_reply(session.library(), sort_by_time(session.library()));
                 });

    const auto options = std::make_shared<PlaceOptions>();
    auto command = commands.add({"place", "Places photos by hand, whatever their times say.",
                                 "qturn place IMG_0012.jpg 14-18 --sitting 4"},
                                [options](Session& session) { return place(session, *options); });
    command.argument("PHOTO", options->photos, "Names, numbers, or numbers from-to");
    command.option("--sitting NUMBER", options->sitting, "The sitting they belong to");
    command.flag("--by-time", options->by_time, "Their time decides again");
    command.flag("--nowhere", options->nowhere, "They belong to no sitting");
}

}  // namespace quarterturn
