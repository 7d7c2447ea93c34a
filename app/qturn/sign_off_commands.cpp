#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/sign_off.h"
#include "indexer/record/caution.h"

namespace quarterturn {
namespace {

Reply sign(Session& session, const std::string& name) {
    const Look look = find_look(session.library(), name);
    const auto reasons = sign_off(session.library(), look.id, local_now());
    Reply reply{{},
                {{"look", look.name},
                 {"look_id", look.id.value},
                 {"signed", reasons.empty()},
                 {"reasons", reasons}}};
    if (reasons.empty()) {
        reply.lines = {look.name + " is signed off: its photos and recipe are sealed."};
        return reply;
    }
    reply.outcome = Outcome::failed;
    reply.lines = {look.name + " is not signed off:"};
    for (const std::string& reason : reasons) reply.lines.push_back("  " + reason);
    return reply;
}

Reply open_again(Session& session, const std::string& name, const std::string& because) {
    const Look look = find_look(session.library(), name);
    reopen(session.library(), look.id, because, local_now());
    return {{look.name + " is open again: " + because},
            {{"look", look.name}, {"look_id", look.id.value}, {"because", because}}};
}

Reply write_record(Session& session, const std::string& name, const std::string& folder) {
    refuse_in_library(session, folder);
    const Look look = find_look(session.library(), name);
    export_record(session.library(), look.id, folder, local_now());
    return {{"The record of " + look.name + " lies in " + folder + ".",
             "To check it any time: cd '" + folder + "' && sha256sum -c manifest-sha256.txt",
             caution_before_passing_on},
            {{"look", look.name},
             {"look_id", look.id.value},
             {"folder", folder},
             {"caution", caution_before_passing_on}}};
}

}  // namespace

void add_sign_off_commands(CommandSet& commands) {
    const auto look = std::make_shared<std::string>();
    auto sign_command = commands.add(
        {"sign-off",
         "Your word that a look is complete and can be repeated; seals its photos and recipe. "
         "Refused with reasons while something is missing.",
         "qturn sign-off 'Low twisted bun'"},
        [look](Session& session) { return sign(session, *look); });
    sign_command.argument("LOOK", *look, "Name or number");

    const auto because = std::make_shared<std::string>();
    auto reopen_command = commands.add(
        {"reopen", "Opens a signed-off look again, with a reason.",
         "qturn reopen 'Low twisted bun' --because 'She wants the veil higher.'"},
        [look, because](Session& session) { return open_again(session, *look, *because); });
    reopen_command.argument("LOOK", *look, "Name or number");
    reopen_command.required_option("--because TEXT", *because, "Your reason");

    const auto folder = std::make_shared<std::string>();
    auto export_command = commands.add(
        {"export-record",
         "Writes a signed-off look as a folder that carries its own checksums (BagIt, RFC 8493).",
         "qturn export-record 'Low twisted bun' --to ~/records/ada-bun"},
        [look, folder](Session& session) { return write_record(session, *look, *folder); });
    export_command.argument("LOOK", *look, "Name or number");
    export_command.required_option("--to FOLDER", *folder, "A new folder");
}

}  // namespace quarterturn
