#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

constexpr const char* own_list_changed = "changed your own shot list";

struct ShotListOptions {
    std::string look;
    std::vector<std::string> required;
    std::vector<std::string> nice_to_have;
    std::vector<std::string> dropped;
    bool save_as_default = false;

    bool change() const { return !required.empty() || !nice_to_have.empty() || !dropped.empty(); }
};

ShotList with_options(ShotList list, const ShotListOptions& options) {
    for (const auto& text : options.required) set_line(list, {shot_from(text), Need::required});
    for (const auto& text : options.nice_to_have) {
        set_line(list, {shot_from(text), Need::nice_to_have});
    }
    for (const auto& text : options.dropped) {
        if (drop_line(list, shot_from(text))) continue;
        throw WrongUse("'" + text + "' is not on the shot list.");
    }
    return list;
}

Reply list_reply(const ShotList& list, const std::string& whose) {
    std::vector<std::vector<std::string>> rows;
    for (const ShotLine& line : list) {
        rows.push_back({shot_text(line.shot), std::string(word(line.need))});
    }
    Reply reply{{whose}, {{"lines", to_json(list)}}};
    append(reply.lines, columns(rows));
    return reply;
}

void keep_shot_list(Library& library, const Look& look, const ShotList& list,
                    const ShotListOptions& options) {
    if (!options.change() && !options.save_as_default) return;
    library.history().record(
        options.change() ? "changed the shot list of " + look.name : own_list_changed, [&] {
            if (options.change()) library.looks().set_shot_list(look.id, list);
            if (options.save_as_default) library.looks().set_own_default_shot_list(list);
        });
}

Reply of_look(Library& library, const ShotListOptions& options) {
    const Look look = find_look(library, options.look);
    const ShotList list = with_options(library.looks().shot_list(look.id), options);
    keep_shot_list(library, look, list, options);
    Reply reply = list_reply(list, "The shot list of " + look.name +
                                       (options.save_as_default ? ", now your own default:" : ":"));
    reply.data["look"] = look.name;
    reply.data["look_id"] = look.id.value;
    return reply;
}

Reply own_default(Library& library, const ShotListOptions& options) {
    if (options.save_as_default) throw WrongUse("Which look's list? Name the look.");
    const ShotList list = with_options(library.looks().own_default_shot_list(), options);
    if (options.change()) {
        library.history().record(own_list_changed,
                                 [&] { library.looks().set_own_default_shot_list(list); });
    }
    return list_reply(list, "Your own default shot list:");
}

}  // namespace

void add_shot_list_commands(CommandSet& commands) {
    const auto options = std::make_shared<ShotListOptions>();
    auto command = commands.add(
        {"shot-list", "Shows or changes the shot list of a look; without a look, your own default.",
         "qturn shot-list 'Low twisted bun' --require 'after, crown' --drop 'before, back'"},
        [options](Session& session) {
            return options->look.empty() ? own_default(session.library(), *options)
                                         : of_look(session.library(), *options);
        });
    command.optional_argument("LOOK", options->look, "Name or number");
    command.option("--require SHOT", options->required, "A shot that must be there; once for each");
    command.option("--offer SHOT", options->nice_to_have,
                   "One that is nice to have; once for each");
    command.option("--drop SHOT", options->dropped, "One that is not wanted; once for each");
    command.flag("--save-as-default", options->save_as_default,
                 "Take this look's list as your own default for other looks");
}

}  // namespace quarterturn
