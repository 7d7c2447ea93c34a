#include "app/qturn/board_reply.h"
#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/empty_party.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/person_caution.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/passing_on.h"
#include "indexer/sheet/board_sheet.h"
#include "indexer/sheet/phone_page.h"
#include "indexer/store/done_table.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct BoardOptions {
    std::string wedding;
    Text client;
    Texts tick;
    Texts untick;
    Texts done;
    Texts not_done;
    std::string out;
    Text paper;
    bool replace = false;

    bool change() const {
        return !tick.empty() || !untick.empty() || !done.empty() || !not_done.empty();
    }
};

struct NamedStep {
    LookId look;
    StepTick tick;
};

NamedStep step_named(Library& library, WeddingId wedding, const std::string& text) {
    const Named parts = named(text);
    if (parts.name.empty()) {
        throw WrongUse("'" + text + "' names no look. Write it as in LOOK=3 for the third step.");
    }
    const int number = number_from(parts.value, text);
    const Look look = find_look(library, parts.name);
    const BoardLook shown = board_look(library, wedding, look.id);
    if (number < 1 || number > static_cast<int>(shown.steps.size())) {
        throw WrongUse("The recipe of " + look.name + " has no step " + parts.value + ": it has " +
                       count_text(shown.steps.size(), "step") + ".");
    }
    return {look.id, {number - 1, shown.steps[static_cast<std::size_t>(number) - 1].words}};
}

WeddingBoard board_of_client(Library& library, WeddingId wedding, const std::string& name) {
    const Client client = find_client(library, name);
    WeddingBoard board = wedding_board(library, wedding);
    keep_only(board, client.id);
    if (board.clients.empty()) {
        throw WrongUse(client.name + " is not of the party of " + board.wedding.name + ".");
    }
    return board;
}

// Where there are steps, ticking them says it.
ClientId client_without_steps(Library& library, WeddingId wedding, const std::string& name) {
    const BoardClient client = board_of_client(library, wedding, name).clients.front();
    if (client.steps() > 0) {
        throw WrongUse(client.client.name + " has a recipe with steps: tick them with --tick.");
    }
    return client.client.id;
}

// All of them are found before any is ticked.
void change_steps(Library& library, WeddingId wedding, const BoardOptions& options) {
    if (!options.change()) return;
    std::vector<NamedStep> ticked;
    std::vector<NamedStep> unticked;
    for (const std::string& text : options.tick) {
        ticked.push_back(step_named(library, wedding, text));
    }
    for (const std::string& text : options.untick) {
        unticked.push_back(step_named(library, wedding, text));
    }
    std::vector<ClientId> done;
    std::vector<ClientId> not_done;
    for (const std::string& name : options.done) {
        done.push_back(client_without_steps(library, wedding, name));
    }
    for (const std::string& name : options.not_done) {
        not_done.push_back(client_without_steps(library, wedding, name));
    }
    library.history().record("changed what is done on the board", [&] {
        DoneTable clients_done(library.database());
        for (const ClientId client : done) clients_done.set(wedding, client);
        for (const ClientId client : not_done) clients_done.clear(wedding, client);
        for (const NamedStep& step : ticked) library.boards().tick(wedding, step.look, step.tick);
        for (const NamedStep& step : unticked) {
            library.boards().untick(wedding, step.look, step.tick.number);
        }
    });
}

void refuse_bad_target(const Session& session, const BoardOptions& options) {
    if (options.out.empty()) return;
    if (!is_pdf(options.out) && !is_html(options.out)) {
        throw WrongUse("A board is written as .pdf for paper or as .html for a phone; '" +
                       options.out + "' ends in neither.");
    }
    refuse_bad_place(session, options.out, options.replace);
}

std::vector<std::string> write_paper(const WeddingBoard& board, Library& library, Decoder& decoder,
                                     const BoardOptions& options) {
    const Drawing drawing;
    const auto ruler = make_text_ruler();
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Document pages = board_sheet(board, library, decoder, *ruler, paper);
    return write_pdf(pages, decoder, library.disk(), options.out).problems;
}

std::vector<std::string> write_phone_page(const WeddingBoard& board, Library& library,
                                          Decoder& decoder, const BoardOptions& options) {
    const PhonePage page = phone_page(board, library, decoder, local_now());
    replace_file(library.disk(), options.out, std::as_bytes(std::span(page.html)));
    return page.problems;
}

void write_board(Reply& reply, const WeddingBoard& board, Library& library,
                 const BoardOptions& options) {
    if (board.wedding.party.empty()) {
        tell_empty_party(reply, board.wedding);
        reply.lines.emplace_back("No board was written.");
        return;
    }
    start_quick_workers();
    refuse_against_own_work(library, photos_on(board), date_of(local_now()));
    const auto decoder = make_quick_decoder();
    const auto problems = is_html(options.out) ? write_phone_page(board, library, *decoder, options)
                                               : write_paper(board, library, *decoder, options);
    reply.lines = {"Written: " + options.out};
    append(reply.lines, problems);
    append(reply.lines, board.remarks);
    tell_caution(reply, !photos_on(board).empty());
    reply.data["file"] = options.out;
    reply.data["problems"] = problems;
    if (!problems.empty()) reply.outcome = Outcome::needs_attention;
}

Reply show_board(Session& session, const BoardOptions& options) {
    refuse_bad_target(session, options);
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    change_steps(library, wedding, options);
    const WeddingBoard board = options.client ? board_of_client(library, wedding, *options.client)
                                              : wedding_board(library, wedding);
    Reply reply = board_reply(board);
    if (!options.out.empty()) write_board(reply, board, library, options);
    return reply;
}

}  // namespace

void add_board_command(CommandSet& commands) {
    const auto options = std::make_shared<BoardOptions>();
    auto command = commands.add(
        {"board",
         "Shows the wedding board: each client's cautions, look and recipe in the order of work; "
         "or writes it for paper or for a phone.",
         "qturn board 'Boathouse' --tick 'Low bun=3' --out board.html"},
        [options](Session& session) { return show_board(session, *options); });
    command.argument("WEDDING", options->wedding, "Name or number");
    command.option("--client CLIENT", options->client, "Only hers");
    command.option("--tick LOOK=STEP", options->tick,
                   "A step that is done, by its number; once for each");
    command.option("--untick LOOK=STEP", options->untick, "Not done after all; once for each");
    command.option("--done CLIENT", options->done,
                   "Her hair is done, where no steps are written; once for each");
    command.option("--not-done CLIENT", options->not_done, "Not done after all; once for each");
    command.option("--out FILE", options->out,
                   "Write it: .pdf to hang by the mirror, .html for a phone");
    command.option("--paper SIZE", options->paper,
                   "Of the PDF: a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.flag("--replace", options->replace, "Write over a file that is there");
}

}  // namespace quarterturn
