#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/search.h"
#include "indexer/intake/tagging.h"

namespace quarterturn {
namespace {

struct TagOptions {
    std::vector<std::string> photos;
    std::optional<std::string> angle;
    std::optional<std::string> stage;
    std::optional<std::string> look;
    std::vector<std::string> shows;
    std::optional<std::string> note;
    bool mirrored = false;
    bool not_mirrored = false;
};

// The word "none" clears.
template <class Parse>
auto changed(const std::optional<std::string>& text, Parse parse) {
    using Value = std::optional<decltype(parse(std::string{}))>;
    if (!text) return std::optional<Value>{};
    return std::optional<Value>{*text == "none" ? Value{} : Value{parse(*text)}};
}

std::optional<std::vector<ClientId>> clients_from(Library& library,
                                                  const std::vector<std::string>& names) {
    if (names.empty()) return std::nullopt;
    std::vector<ClientId> clients;
    for (const std::string& name : names) {
        if (name != "none") clients.push_back(find_client(library, name).id);
    }
    return clients;
}

TagWishes wishes_from(Library& library, const TagOptions& options) {
    if (options.mirrored && options.not_mirrored) {
        throw WrongUse("A photo is either --mirrored or --not-mirrored.");
    }
    TagWishes wishes;
    wishes.angle = changed(options.angle, angle_from);
    wishes.stage = changed(options.stage, stage_from);
    wishes.look =
        changed(options.look, [&](const std::string& name) { return find_look(library, name).id; });
    wishes.shown = clients_from(library, options.shows);
    wishes.note = options.note;
    if (options.mirrored || options.not_mirrored) wishes.mirrored = options.mirrored;
    return wishes;
}

bool nothing_said(const TagOptions& options) {
    return !options.angle && !options.stage && !options.look && options.shows.empty() &&
           !options.note && !options.mirrored && !options.not_mirrored;
}

Reply photos_reply(const std::string& verb, const std::vector<Photo>& photos) {
    return {{verb + ' ' + count_text(photos.size(), "photo") + "."},
            {{"photos", short_list_json(photos)}}};
}

Reply tag_as_told(Session& session, const TagOptions& options) {
    if (nothing_said(options)) {
        throw WrongUse("Say what the photos are, for example --angle left --stage after.");
    }
    Library& library = session.library();
    const auto photos = find_photos(library, options.photos);
    tag(library, ids_of(photos), wishes_from(library, options));
    return photos_reply("Tagged", photos);
}

struct ConfirmOptions {
    std::vector<std::string> photos;
    std::string sitting;
    bool all = false;
};

std::vector<Photo> photos_to_confirm(Library& library, const ConfirmOptions& options) {
    const int ways = static_cast<int>(!options.photos.empty()) +
                     static_cast<int>(!options.sitting.empty()) + static_cast<int>(options.all);
    if (ways != 1) throw WrongUse("Name photos, or --sitting NUMBER, or --all.");
    if (!options.photos.empty()) return find_photos(library, options.photos);
    PhotoSearch search;
    if (!options.all) search.sitting = find_sitting(library, options.sitting).id;
    return search_photos(library, search);
}

Reply confirm(Session& session, const ConfirmOptions& options) {
    Library& library = session.library();
    const int confirmed = confirm_suggestions(library, ids_of(photos_to_confirm(library, options)));
    return {{"Took over what was suggested for " +
             count_text(static_cast<std::size_t>(confirmed), "photo") + "."},
            {{"confirmed", confirmed}}};
}

struct AcceptOptions {
    std::vector<std::string> photos;
    std::string because;
    bool take_back = false;
};

Reply accept(Session& session, const AcceptOptions& options) {
    if (options.because.empty() != options.take_back) {
        throw WrongUse("Give the reason with --because, or --take-back.");
    }
    Library& library = session.library();
    const auto photos = find_photos(library, options.photos);
    TagWishes wishes;
    wishes.accepted_because = options.because;
    tag(library, ids_of(photos), wishes);
    return photos_reply(options.take_back ? "No longer accepted:" : "Accepted", photos);
}

void add_tag(CommandSet& commands) {
    const auto options = std::make_shared<TagOptions>();
    auto command = commands.add(
        {"tag", "Says what photos show; what you don't name stays. 'none' clears.",
         "qturn tag IMG_0012.jpg 14-18 --angle left --stage after --look 'Low twisted bun'"},
        [options](Session& session) { return tag_as_told(session, *options); });
    command.argument("PHOTO", options->photos, "Names, numbers, or numbers from-to");
    command.option("--angle ANGLE", options->angle,
                   "Where the camera stood: front, left, right, back, crown, left-three-quarter, "
                   "right-three-quarter, detail. Left and right are the client's own");
    command.option("--stage STAGE", options->stage, "before, during or after");
    command.option("--look LOOK", options->look, "The look, by name or number");
    command.option("--shows CLIENT", options->shows,
                   "A client who is seen besides the sitting's own; once for each");
    command.option("--note TEXT", options->note, "Anything to remember");
    command.flag("--mirrored", options->mirrored, "Taken in a mirror, or saved flipped by a phone");
    command.flag("--not-mirrored", options->not_mirrored, "The right way round");
}

void add_confirm(CommandSet& commands) {
    const auto options = std::make_shared<ConfirmOptions>();
    auto command = commands.add(
        {"confirm", "Takes over suggested angles and stages where you said nothing yet.",
         "qturn confirm --sitting 4"},
        [options](Session& session) { return confirm(session, *options); });
    command.optional_argument("PHOTO", options->photos, "Names, numbers, or numbers from-to");
    command.option("--sitting NUMBER", options->sitting, "All photos of this sitting");
    command.flag("--all", options->all, "All photos of the library");
}

void add_accept(CommandSet& commands) {
    const auto options = std::make_shared<AcceptOptions>();
    auto command =
        commands.add({"accept", "Lets a flawed photo stand for its shot, with your reason.",
                      "qturn accept IMG_0031.jpg --because 'The twist is clear enough.'"},
                     [options](Session& session) { return accept(session, *options); });
    command.argument("PHOTO", options->photos, "Names, numbers, or numbers from-to");
    command.option("--because TEXT", options->because, "Your reason");
    command.flag("--take-back", options->take_back, "It is flawed after all");
}

}  // namespace

void add_tag_commands(CommandSet& commands) {
    add_tag(commands);
    add_confirm(commands);
    add_accept(commands);
}

}  // namespace quarterturn
