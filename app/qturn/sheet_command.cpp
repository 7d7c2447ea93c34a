#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/person_caution.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/disk/lines_by_reason.h"
#include "indexer/intake/threads.h"
#include "indexer/portfolio/pass_on.h"
#include "indexer/sheet/contact_sheet.h"
#include "indexer/sheet/photos_on.h"
#include "indexer/sheet/pictures_ahead.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct SheetOptions {
    std::string look;
    std::string sitting;
    std::string out;
    Text paper;
    Text use;
    bool during = false;
    bool replace = false;
};

void refuse_bad_target(const Session& session, const SheetOptions& options) {
    const Path file = options.out;
    if (!is_pdf(file) && picture_format(file).empty()) {
        throw WrongUse("A sheet is written as .pdf, .png, .jpg or .jpeg; '" + options.out +
                       "' ends in none of these.");
    }
    if (options.use && !is_pdf(file)) {
        throw WrongUse("A sheet for others is written as .pdf, so that it goes out as a whole.");
    }
    refuse_bad_place(session, file, options.replace);
}

void refuse_to_replace_pages(const Document& document, const Path& file) {
    for (std::size_t page = 1; page <= document.pages.size(); ++page) {
        refuse_to_replace(picture_file(file, page));
    }
}

Paper paper_of(Library& library, const SheetOptions& options) {
    return options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
}

Document laid_out(Library& library, Decoder& decoder, const SheetOptions& options) {
    const auto ruler = make_text_ruler();
    const Paper paper = paper_of(library, options);
    const SheetFor whom = options.use ? SheetFor::others : SheetFor::own_work;
    if (!options.sitting.empty()) {
        return sitting_sheet(library, *ruler, find_sitting(library, options.sitting).id, paper,
                             whom);
    }
    return contact_sheet(library, decoder, *ruler, find_look(library, options.look).id,
                         {paper, options.during, whom});
}

Document sheet_to_write(Library& library, Decoder& decoder, const SheetOptions& options) {
    const Document document = laid_out(library, decoder, options);
    return options.use ? document : for_own_work(library, document, date_of(local_now()));
}

Reply written_reply(const Document& document, const Written& written) {
    auto files = nlohmann::json::array();
    Reply reply;
    for (const Path& file : written.files) {
        files.push_back(file.string());
        reply.lines.push_back("Written: " + file.string());
    }
    append(reply.lines, written.problems);
    auto older = nlohmann::json::array();
    for (const Path& file : written.older) older.push_back(file.string());
    if (!older.empty()) reply.lines.push_back(words_of_older(written));
    reply.data = {{"title", document.title},
                  {"pages", document.pages.size()},
                  {"files", files},
                  {"problems", written.problems},
                  {"older_pages", older}};
    tell_caution(reply, shows_photos(document));
    if (!written.problems.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

// For others: through the gate, and into the ledger before the file is there.
Reply write_for_others(const Document& document, Library& library, Decoder& decoder,
                       const SheetOptions& options) {
    const Use use = use_from(*options.use);
    DrawnPdf pdf;
    const auto draw = [&] {
        pdf = draw_pdf(document, decoder, library.disk());
        return std::vector(pdf.span().begin(), pdf.span().end());
    };
    const PassedOn passed =
        pass_on(library, decoder, document, draw, {use, options.out}, local_now());
    auto against = nlohmann::json::array();
    for (const RefusedFile& photo : passed.against) {
        against.push_back(photo.file.string() + ": " + photo.reason);
    }
    Reply reply{{},
                {{"use", word(use)}, {"exports", nlohmann::json::array()}, {"against", against}}};
    if (!passed.against.empty()) {
        reply.lines.emplace_back("Nothing was written, since some of its photos may not go:");
        append(reply.lines, lines_by_reason(passed.against));
        reply.outcome = Outcome::failed;
        return reply;
    }
    for (const ExportId id : passed.exports) reply.data["exports"].push_back(id.value);
    const Reply written = written_reply(document, {{options.out}, pdf.problems});
    append(reply.lines, written.lines);
    reply.lines.emplace_back(
        "It carries the look, the angles and the craft, and neither her name nor her day, cautions "
        "or words. It stands in the ledger.");
    reply.data.update(written.data);
    reply.outcome = written.outcome;
    return reply;
}

Reply write(const Document& document, Library& library, Decoder& decoder,
            const SheetOptions& options) {
    if (options.use) return write_for_others(document, library, decoder, options);
    if (is_pdf(options.out)) {
        return written_reply(document, write_pdf(document, decoder, library.disk(), options.out));
    }
    if (!options.replace) refuse_to_replace_pages(document, options.out);
    return written_reply(document, write_pictures(document, decoder, library.disk(), options.out));
}

Reply sheet(Session& session, const SheetOptions& options) {
    if (options.look.empty() == options.sitting.empty()) {
        throw WrongUse("Name a look, or a sitting with --sitting NUMBER.");
    }
    refuse_bad_target(session, options);
    start_quick_workers();
    // Until the program ends, which gives all of it back at once.
    [[maybe_unused]] static const auto* const kept_memory = new KeptMemory;
    Library& library = session.library();
    const auto decoder = make_quick_decoder();
    if (options.sitting.empty()) {
        const Drawing drawing;
        return write(sheet_to_write(library, *decoder, options), library, *decoder, options);
    }
    const SittingId sitting = find_sitting(library, options.sitting).id;
    PicturesAhead pictures(frames_of_sitting(library, sitting, paper_of(library, options)),
                           *decoder, library.disk());
    const Drawing drawing;
    Document document = sheet_to_write(library, *decoder, options);
    pictures.give_to(document);
    return write(document, library, *decoder, options);
}

}  // namespace

void add_sheet_command(CommandSet& commands) {
    const auto options = std::make_shared<SheetOptions>();
    auto command = commands.add(
        {"sheet",
         "Writes a contact sheet of a look, or of every frame of a sitting, as PDF, PNG or JPEG.",
         "qturn sheet 'Low twisted bun' --out bun.pdf --paper a4"},
        [options](Session& session) { return sheet(session, *options); });
    command.optional_argument("LOOK", options->look, "Name or number");
    command.option("--sitting NUMBER", options->sitting, "Every frame of this sitting instead");
    command.required_option("--out FILE", options->out,
                            "The file to write; its ending says which kind");
    command.option("--paper SIZE", options->paper,
                   "a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.option("--for USE", options->use,
                   "Made for others: shown in consultation, website, social media, print, "
                   "competition or teaching; written only where all its photos may go");
    command.flag("--during", options->during, "A row for during as well as before and after");
    command.flag("--replace", options->replace, "Write over a file that is there");
}

}  // namespace quarterturn
