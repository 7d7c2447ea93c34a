#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/portfolio/pair_export.h"
#include "indexer/rules/fair_pair.h"
#include "indexer/store/library_settings.h"
#include "indexer/worker/confined.h"
#include "ui/painter/page_pixels.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct PictureOptions {
    std::string pair;
    std::string use;
    std::string out;
    Text shape;
    std::optional<int> quality;
    std::string caption;
    bool above = false;
    bool even_light = false;
    bool line = false;
    bool say = false;
    bool say_inside = false;
    bool no_data_mining = false;
};

PictureShape picture_shape_from(const std::string& text) {
    if (const auto shape = parse_picture_shape(text)) return *shape;
    throw WrongUse("'" + text + "' is no shape. Known are square, 4:5, 9:16 and A5.");
}

std::string line_from(Library& library) {
    std::string line = business_words(library.settings());
    if (!line.empty()) return line;
    throw WrongUse("No business name or line is set: qturn settings 'business name' NAME");
}

PairExportWishes wishes_from(Library& library, const PictureOptions& options) {
    PairExportWishes wishes;
    wishes.use = use_from(options.use);
    wishes.file = options.out;
    if (picture_format(wishes.file) != "jpeg") {
        throw WrongUse("The picture is a JPEG: let its name end in .jpg, as in --out pair.jpg.");
    }
    PairPictureWish& picture = wishes.picture;
    if (options.shape) picture.shape = picture_shape_from(*options.shape);
    picture.one_above_other = options.above;
    picture.even_light = options.even_light;
    if (options.line) picture.business_line = line_from(library);
    picture.caption = options.caption;
    picture.say_what_was_done = options.say;
    wishes.tell_inside = options.say_inside;
    wishes.quality = jpeg_quality_from(options.quality, usual_export_quality);
    wishes.no_data_mining = options.no_data_mining;
    return wishes;
}

void add_made(Reply& reply, const PairGone& gone) {
    reply.lines.push_back(gone.exported.front().file);
    append(reply.lines, gone.done);
    if (!gone.credit_line.empty()) {
        reply.lines.push_back("Below the photos stands: " + gone.credit_line);
    }
    append(reply.lines, gone.remarks);
    append(reply.lines, gone.unfair);
    if (!gone.unfair.empty()) reply.lines.emplace_back(unfair_caution);
    if (!gone.remarks.empty() || !gone.unfair.empty()) reply.outcome = Outcome::needs_attention;
}

void add_lines(Reply& reply, const PairGone& gone, const PairExportWishes& wishes,
               const Pair& pair) {
    const std::string number = std::to_string(pair.id.value);
    if (!gone.exported.empty()) {
        add_made(reply, gone);
    } else if (!gone.problem.empty()) {
        reply.lines.push_back("No picture was made of pair " + number + ": " + gone.problem);
        if (pair.choice.refused) {
            reply.lines.push_back("List it again with: qturn pairs refuse " + number +
                                  " --take-back");
        }
    } else {
        reply.lines.push_back("No picture was made of pair " + number + ": it may not be shown " +
                              std::string(in_words(wishes.use)) + ".");
        for (const std::string& words : gone.against) reply.lines.push_back("  " + words);
    }
    reply.lines.emplace_back(consent_caution);
}

Reply picture(Session& session, const PictureOptions& options) {
    Library& library = session.library();
    const PairExportWishes wishes = wishes_from(library, options);
    const Pair pair = find_pair(library, options.pair);
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    const PairGone gone = export_pair(
        library, *decoder, *ruler,
        [&](const Page& page) { return page_pixels(page, *decoder, library.disk()); }, pair, wishes,
        local_now());
    Reply reply{{},
                {{"pair", pair.id.value},
                 {"use", word(wishes.use)},
                 {"against", gone.against},
                 {"problem", gone.problem.empty() ? json() : json(gone.problem)},
                 {"done", gone.done},
                 {"remarks", gone.remarks},
                 {"unfair", gone.unfair},
                 {"credit_line", gone.credit_line},
                 {"exports", json_of_each(gone.exported)},
                 {"caution", consent_caution}}};
    add_lines(reply, gone, wishes, pair);
    if (gone.exported.empty()) reply.outcome = Outcome::failed;
    return reply;
}

}  // namespace

void add_pair_picture_command(CommandSet& commands) {
    const auto options = std::make_shared<PictureOptions>();
    auto command = commands.add(
        {"pairs picture",
         "Makes one picture of a pair where both photos may go for a use, and notes it in the "
         "ledger.",
         "qturn pairs picture 12 --for website --out pair.jpg --shape 4:5 --line"},
        [options](Session& session) { return picture(session, *options); });
    command.argument("PAIR", options->pair, "Its number");
    command.required_option("--for USE", options->use,
                            "own record, shown in consultation, website, social media, print, "
                            "competition or teaching");
    command.required_option("--out FILE", options->out,
                            "The JPEG to write; nothing is written over");
    command.option("--shape SHAPE", options->shape, "square (unless named), 4:5, 9:16 or A5");
    command.flag("--above", options->above, "One above the other instead of side by side");
    command.flag("--even-light", options->even_light,
                 "One exposure and one white balance for the whole second photo, as its background "
                 "is lit in the first");
    command.flag("--line", options->line, "Put your business name and line below the photos");
    command.option("--caption TEXT", options->caption,
                   "Below the photos and in the picture's metadata; look family and angle in the "
                   "metadata unless named");
    command.flag("--say-what-was-done", options->say,
                 "Behind the caption: cut, turned, scaled, lit");
    command.flag("--say-inside", options->say_inside,
                 "The same in the picture's metadata, with how differently the photos were taken");
    command.option("--quality NUMBER", options->quality, "Of the JPEG, 1 to 100; 88 unless named");
    command.flag("--no-data-mining", options->no_data_mining,
                 "Say in it that it may not be used to train machines");
}

}  // namespace quarterturn
