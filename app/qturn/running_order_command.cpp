#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/morning_wishes.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/running_order_reply.h"
#include "app/qturn/say.h"
#include "indexer/sheet/running_order_sheet.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct RunningOrderOptions {
    std::string wedding;
    MorningOptions morning;
    Text move;
    Text at;
    std::optional<int> stylist;
    bool finish = false;
    bool again = false;
    bool check = false;
    std::string out;
    Text paper;
    bool replace = false;

    bool changes_wishes() const { return !morning.says_nothing() || again; }
};

void refuse_half_a_move(const RunningOrderOptions& options) {
    if (options.move.has_value() != options.at.has_value()) {
        throw WrongUse("To move a client, name her with --move and the time with --at.");
    }
    if (options.finish && !options.move) throw WrongUse("--finish goes with --move.");
    if (options.stylist && !options.move) {
        throw WrongUse("--stylist goes with --move. How many there are is said with --stylists.");
    }
}

bool can_be_planned(Library& library, WeddingId wedding) {
    try {
        plan_of(wedding_morning(library, wedding));
        return true;
    } catch (const std::invalid_argument&) {
        return false;
    }
}

// Wishes that leave a morning without any plan, which had one before, are not kept.
void keep_wishes(Library& library, WeddingId wedding, const RunningOrderOptions& options) {
    const bool had_a_plan = can_be_planned(library, wedding);
    Morning morning = with_options(library, library.mornings().of(wedding), options.morning);
    if (options.again) morning.kept.clear();
    library.mornings().save(wedding, morning);
    if (had_a_plan) plan_of(wedding_morning(library, wedding));
}

void move(Library& library, WeddingId wedding, const RunningOrderOptions& options) {
    const ClientId client = find_client(library, *options.move).id;
    std::optional<int> stylist = options.stylist;
    if (stylist) --*stylist;
    keep_move(library, wedding_morning(library, wedding), client, minute_from(*options.at), stylist,
              options.finish ? SeatPart::finish : SeatPart::set);
}

void change_morning(Library& library, WeddingId wedding, const RunningOrderOptions& options) {
    if (options.changes_wishes()) {
        library.history().record("changed the running order",
                                 [&] { keep_wishes(library, wedding, options); });
    }
    if (options.move) {
        library.history().record("moved a client in the running order",
                                 [&] { move(library, wedding, options); });
    }
}

void write_page(Reply& reply, Library& library, const WeddingMorning& morning,
                const MorningPlan& plan, const RunningOrderOptions& options) {
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Document page =
        running_order_sheet(morning, plan, business_words(library.settings()), *ruler, paper);
    write_pdf(page, *decoder, library.disk(), options.out);
    reply.lines.push_back("Written: " + options.out);
    reply.data["file"] = options.out;
}

Reply running_order(Session& session, const RunningOrderOptions& options) {
    refuse_half_a_move(options);
    if (!options.out.empty()) refuse_bad_pdf(session, options.out, options.replace);
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    change_morning(library, wedding, options);
    const WeddingMorning morning = wedding_morning(library, wedding);
    if (morning.needs.clients.empty()) {
        Reply reply = nobody_reply(morning);
        if (!options.out.empty()) reply.lines.push_back("Not written: " + options.out);
        return reply;
    }
    if (options.check) return possible_reply(morning, best_plan(morning));
    const MorningPlan plan = plan_of(morning);
    Reply reply = running_order_reply(morning, plan);
    if (!options.out.empty()) write_page(reply, library, morning, plan, options);
    return reply;
}

void add_wishes(Command command, MorningOptions& options) {
    command.option("--stylists NUMBER", options.stylists, "How many work, one to four");
    command.option("--arrival TIME", options.arrivals,
                   "From when on, as in 06:30 for all or 2=07:00 for the second");
    command.option("--break FROM-TO", options.breaks,
                   "As in 09:00-09:15 for all or 2=09:00-09:15; once for each");
    command.flag("--no-breaks", options.no_breaks, "Take out the breaks that were set");
    command.option("--first CLIENT", options.first, "Nobody is begun before her");
    command.option("--last CLIENT", options.last, "Nobody is ready after her");
    command.flag("--any-order", options.any_order, "Nobody must be first or last");
    command.option("--ready-by CLIENT=TIME", options.ready_by,
                   "Hers, where it is not the wedding's; CLIENT=none: the wedding's again");
    command.option("--comes CLIENT=TIME", options.comes,
                   "She cannot sit down earlier; CLIENT=none: at any time");
    command.option("--minutes CLIENT=MINUTES", options.minutes,
                   "In place of her recipe's: 45, or 20+15+40 where a set cools between; "
                   "none: the recipe's again");
}

}  // namespace

void add_running_order_command(CommandSet& commands) {
    const auto options = std::make_shared<RunningOrderOptions>();
    auto command = commands.add(
        {"running-order", "Plans the wedding morning: who sits when, and with whom.",
         "qturn running-order 'Boathouse' --stylists 2 --arrival 06:30 --last 'Ada Lindqvist'"},
        [options](Session& session) { return running_order(session, *options); });
    command.argument("WEDDING", options->wedding, "Name or number");
    add_wishes(command, options->morning);
    command.option("--move CLIENT", options->move, "Change the plan by hand: she is begun --at");
    command.option("--at TIME", options->at, "When, as in 07:40");
    command.option("--stylist NUMBER", options->stylist, "And by this stylist");
    command.flag("--finish", options->finish, "Move her finish alone; her set stays");
    command.flag("--again", options->again, "Drop what was changed by hand and plan again");
    command.flag("--check", options->check, "Only say whether all can be ready in time");
    command.option("--out FILE", options->out, "Write the time chart and the list as a PDF");
    command.option("--paper SIZE", options->paper,
                   "a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.flag("--replace", options->replace, "Write over a file that is there");
}

}  // namespace quarterturn
