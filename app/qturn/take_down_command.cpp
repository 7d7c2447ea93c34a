#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/person_caution.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/sheet/photos_on.h"
#include "indexer/sheet/take_down_card.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct TakeDownOptions {
    std::string look;
    std::string out;
    Text paper;
    bool replace = false;
};

Reply take_down_reply(const TakeDown& card) {
    Reply reply;
    reply.lines.push_back("Letting the hair down: " + card.client.name);
    const auto add = [&](const char* what, const std::string& words) {
        if (!words.empty()) reply.lines.push_back(std::string(what) + words);
    };
    add("From: ", card.from);
    add("Into: ", card.to);
    add("At: ", card.at);
    add("Done by: ", card.done_by);
    for (const std::string& caution : card.cautions) add("! ", caution);
    add("Take out: ", card.taken_out);
    add("Leave alone: ", card.stays);
    for (std::size_t i = 0; i < card.steps.size(); ++i) {
        reply.lines.push_back("  " + std::to_string(i + 1) + ". " + card.steps[i]);
    }
    append(reply.lines, card.lacks);
    reply.data = {{"client", card.client.name},
                  {"from", card.from},
                  {"to", card.to},
                  {"at", card.at},
                  {"done_by", card.done_by},
                  {"taken_out", card.taken_out},
                  {"stays", card.stays},
                  {"steps", card.steps},
                  {"cautions", card.cautions},
                  {"lacks", card.lacks}};
    if (!card.lacks.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

void write_card(Reply& reply, const TakeDown& card, Library& library,
                const TakeDownOptions& options) {
    const Drawing drawing;
    const auto decoder = make_quick_decoder();
    const auto ruler = make_text_ruler();
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Document page = for_own_work(
        library, take_down_card(card, library, *decoder, *ruler, paper), date_of(local_now()));
    const Written written = write_pdf(page, *decoder, library.disk(), options.out);
    reply.lines = {"Written: " + options.out};
    append(reply.lines, written.problems);
    append(reply.lines, card.lacks);
    tell_caution(reply, shows_photos(page));
    reply.data["file"] = options.out;
    reply.data["problems"] = written.problems;
    if (!written.problems.empty()) reply.outcome = Outcome::needs_attention;
}

Reply show_take_down(Session& session, const TakeDownOptions& options) {
    if (!options.out.empty()) refuse_bad_pdf(session, options.out, options.replace);
    Library& library = session.library();
    const TakeDown card = take_down(library, find_look(library, options.look).id);
    Reply reply = take_down_reply(card);
    if (!options.out.empty()) write_card(reply, card, library, options);
    return reply;
}

}  // namespace

void add_take_down_command(CommandSet& commands) {
    const auto options = std::make_shared<TakeDownOptions>();
    auto command = commands.add(
        {"take-down",
         "Says how the hair comes down for a second look; or writes it as a card of one page that "
         "a bridesmaid can follow.",
         "qturn take-down 'Let down in waves' --out card.pdf"},
        [options](Session& session) { return show_take_down(session, *options); });
    command.argument("LOOK", options->look, "Name or number of either look");
    command.option("--out FILE", options->out, "Write the card as a PDF");
    command.option("--paper SIZE", options->paper,
                   "a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.flag("--replace", options->replace, "Write over a file that is there");
}

}  // namespace quarterturn
