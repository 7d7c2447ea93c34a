#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/pair_reply.h"
#include "app/qturn/parse.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/disk/clock.h"
#include "indexer/portfolio/inspiration.h"
#include "indexer/portfolio/more_like_this.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct LikeOptions {
    Text picture;
    Text pair;
    Text client;
    Text inspiration;
    Text angle;
    std::optional<int> most;
};

MeasureReport measure_rest(Library& library, Decoder& decoder) {
    const StopOnSignal stop;
    ProgressLine line(false);
    return measure_hair(library, decoder, line.counter(), stop.token());
}

Path picture_of(Library& library, const LikeOptions& options) {
    if (!options.inspiration) return *options.picture;
    return inspiration_file(library, find_inspiration(library, *options.inspiration));
}

std::vector<LikePair> found_like(Library& library, Decoder& decoder, const LikeOptions& options) {
    const auto most = static_cast<std::size_t>(options.most.value_or(10));
    if (options.pair) return pairs_like(library, find_pair(library, *options.pair), most);
    const auto angle = options.angle ? std::optional(angle_from(*options.angle)) : std::nullopt;
    return pairs_like(library, decoder, picture_of(library, options), angle, most);
}

void refuse_unclear(const LikeOptions& options) {
    const int named =
        options.picture.has_value() + options.pair.has_value() + options.inspiration.has_value();
    if (named != 1) {
        throw WrongUse("Name a picture, or a pair with --pair, or a kept one with --inspiration.");
    }
    if (options.pair && options.angle) {
        throw WrongUse("A pair has its angle; --angle goes with a picture.");
    }
    if (options.client && !options.picture) {
        throw WrongUse("--client keeps a picture with her: name the picture.");
    }
    if (options.most && *options.most < 1) throw WrongUse("--most is at least 1.");
    if (options.picture && !std::filesystem::is_regular_file(*options.picture)) {
        throw WrongUse("There is no file " + *options.picture + ".");
    }
}

Reply like_reply(Library& library, const std::vector<LikePair>& found) {
    std::vector<PairId> numbers;
    for (const LikePair& each : found) numbers.push_back(each.pair);
    const std::vector<Pair> pairs = library.pairs().these(numbers);
    const auto photos = photos_of(library, pairs);
    const Names names(library);
    std::vector<std::vector<std::string>> rows;
    json data = json::array();
    for (std::size_t i = 0; i < found.size(); ++i) {
        const MadePair& made = pairs[i].made;
        rows.push_back({number_text(pairs[i].id.value), names.look(made.place.look),
                        std::string(word(made.place.angle)), photos.at(made.second).file.name,
                        joined(found[i].reasons)});
        data.push_back(to_json(pairs[i], names, photos));
        data.back()["unlikeness"] = found[i].unlikeness;
        data.back()["reasons"] = found[i].reasons;
    }
    if (rows.empty()) rows.push_back({"Nothing to compare with was found among the pairs."});
    return {columns(rows), {{"pairs", data}}};
}

Reply like(Session& session, const LikeOptions& options) {
    refuse_unclear(options);
    Library& library = session.library();
    std::optional<ClientId> keep_with;
    if (options.client) keep_with = find_client(library, *options.client).id;
    const auto decoder = make_confined_decoder();
    const MeasureReport report = measure_rest(library, *decoder);
    auto found = found_like(library, *decoder, options);
    Reply reply = like_reply(library, found);
    if (keep_with) {
        library.history().record("kept a picture with a client", [&] {
            keep_inspiration(library, *options.picture, *keep_with, local_now());
        });
        reply.lines.emplace_back(
            "The picture is kept with her as somebody else's work, and is never exported. See: "
            "qturn inspiration list");
    }
    reply.data["problems"] = report.failed;
    append(reply.lines, report.failed);
    if (report.stopped || !report.failed.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply measure(Session& session) {
    const auto decoder = make_confined_decoder();
    const MeasureReport report = measure_rest(session.library(), *decoder);
    Reply reply{
        {"Measured " + count_text(static_cast<std::size_t>(report.measured), "photo") + "."},
        {{"measured", report.measured}, {"problems", report.failed}, {"stopped", report.stopped}}};
    append(reply.lines, report.failed);
    if (report.stopped || !report.failed.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace

void add_pair_like_commands(CommandSet& commands) {
    commands.add(
        {"pairs measure", "Measures the hair in pairs for 'pairs like', which else does so first.",
         "qturn pairs measure"},
        measure);
    const auto options = std::make_shared<LikeOptions>();
    auto command =
        commands.add({"pairs like", "Finds the looks most like a picture or a pair, and says why.",
                      "qturn pairs like ~/inspiration.jpg --angle back"},
                     [options](Session& session) { return like(session, *options); });
    command.optional_argument("PICTURE", options->picture,
                              "A picture from elsewhere; it is only read");
    command.option("--pair PAIR", options->pair, "One of your own pairs, by its number");
    command.option("--inspiration NUMBER", options->inspiration,
                   "A picture that is kept with a client; see 'inspiration list'");
    command.option("--client NAME", options->client,
                   "Keep the picture with this client, as somebody else's work");
    command.option("--angle ANGLE", options->angle, "Only looks from where the picture was taken");
    command.option("--most COUNT", options->most, "How many to list (10 unless set)");
}

}  // namespace quarterturn
