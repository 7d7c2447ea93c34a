#include <unistd.h>

#include <iostream>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/erasure/empty_bin.h"
#include "indexer/intake/bin.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::string photos_text(std::size_t count) {
    return count_text(count, "photo");
}

std::string leaving_text(const LeavingBin& leaving) {
    return photos_text(static_cast<std::size_t>(leaving.photos)) +
           (leaving.photos == 1 ? " goes" : " go") + " for good on " + iso_text(leaving.on) + ".";
}

Reply list_bin(Session& session) {
    Library& library = session.library();
    Reply reply{{}, {{"photos", json::array()}, {"leaving", json::array()}}};
    std::vector<std::vector<std::string>> rows;
    for (const auto& [photo, since] : library.bin().all()) {
        rows.push_back({number_text(photo.id.value), photo.file.name, "since " + iso_text(since)});
        json each = short_json(photo);
        each["since"] = iso_text(since);
        each["leaves"] = iso_text(leaves_bin(since));
        reply.data["photos"].push_back(std::move(each));
    }
    append(reply.lines, columns(rows));
    for (const LeavingBin& leaving : leaving_bin(library)) {
        reply.lines.push_back(leaving_text(leaving));
        reply.data["leaving"].push_back({{"on", iso_text(leaving.on)}, {"photos", leaving.photos}});
    }
    if (rows.empty()) reply.lines.emplace_back("The bin is empty.");
    return reply;
}

Reply add_to_bin(Session& session, const Texts& names) {
    Library& library = session.library();
    const auto photos = find_photos(library, names);
    const Date today = date_of(local_now());
    put_into_bin(library, ids_of(photos), today);
    const Date leaves = leaves_bin(today);
    return {{photos_text(photos.size()) + " put into the bin.",
             leaving_text({leaves, static_cast<int>(photos.size())}) +
                 " Until then: qturn bin take-out"},
            {{"photos", short_list_json(photos)}, {"leaves", iso_text(leaves)}}};
}

Reply take_out(Session& session, const Texts& names) {
    Library& library = session.library();
    const auto photos = find_photos_in_bin(library, names);
    take_out_of_bin(library, ids_of(photos));
    return {{photos_text(photos.size()) + " taken out of the bin, as before."},
            {{"photos", short_list_json(photos)}}};
}

// At a terminal she is asked; a program says it with --yes.
bool wants_it(std::size_t photos, bool yes) {
    if (yes || isatty(STDIN_FILENO) != 1) return yes;
    std::cerr << photos_text(photos)
              << " of the bin would be gone for good, which cannot be undone. Type yes: "
              << std::flush;
    std::string answer;
    std::getline(std::cin, answer);
    return answer == "yes";
}

Reply empty(Session& session, bool yes) {
    Library& library = session.library();
    const std::size_t count = library.bin().all().size();
    if (count > 0 && !wants_it(count, yes)) {
        throw WrongUse("The bin was not emptied: " + photos_text(count) +
                       " would be gone for good. Look with: qturn bin list, then say --yes");
    }
    const BinEmptied emptied = empty_bin(library);
    Reply reply{
        {count == 0 ? "The bin was empty already."
                    : photos_text(static_cast<std::size_t>(emptied.gone)) + " gone for good."},
        {{"gone", emptied.gone}, {"left", emptied.left}}};
    append(reply.lines, emptied.left);
    if (!emptied.left.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace

void add_bin_commands(CommandSet& commands) {
    commands.group("bin", "Photos put away, kept for 30 days, and then gone for good.");
    commands.add(
        {"bin list", "Lists the photos in the bin, and when they go for good.", "qturn bin list"},
        list_bin);

    const auto in = std::make_shared<Texts>();
    auto add_command = commands.add(
        {"bin add",
         "Puts photos into the bin: they stand in no list any more, and come back as they were "
         "when they are taken out within 30 days.",
         "qturn bin add IMG_0012.jpg 14-18"},
        [in](Session& session) { return add_to_bin(session, *in); });
    add_command.argument("PHOTOS", *in, "By name, number, numbers from to, or SHA-256");

    const auto out = std::make_shared<Texts>();
    auto out_command = commands.add(
        {"bin take-out", "Takes photos out of the bin, with their tags and place as before.",
         "qturn bin take-out IMG_0012.jpg"},
        [out](Session& session) { return take_out(session, *out); });
    out_command.argument("PHOTOS", *out, "By name, number or SHA-256");

    const auto yes = std::make_shared<bool>(false);
    auto empty_command =
        commands.add({"bin empty", "Lets all photos in the bin go for good, now. Asks first.",
                      "qturn bin empty --yes"},
                     [yes](Session& session) { return empty(session, *yes); });
    empty_command.flag("--yes", *yes, "In place of the question");
}

}  // namespace quarterturn
