#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/sheet/consent_sheet.h"
#include "indexer/store/library_settings.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct AttachOptions {
    std::string file;
    Texts entries;
};

Reply attach(Session& session, const AttachOptions& options) {
    Library& library = session.library();
    std::vector<ConsentId> ids;
    for (std::string text : options.entries) {
        if (text.starts_with('#')) text.erase(0, 1);
        ids.push_back(ConsentId{number_from(text, text)});
    }
    const ConsentPaper paper = attach_paper(library, options.file, ids, local_now());
    return {{"Attached to " + count_text(ids.size(), "entry", "entries") + ": " + paper.path},
            {{"paper", to_json(paper)}}};
}

struct FormOptions {
    std::string client;
    std::string out;
    Text paper;
    bool replace = false;
    bool write_wording = false;
};

constexpr const char* form_caution =
    "The form is a starting point: have it checked against your local law before you use it.";

FormFacts form_facts(Library& library, const FormOptions& options) {
    FormFacts facts;
    if (!options.client.empty()) facts.client = find_client(library, options.client).name;
    facts.business = library.settings().get(business_name_setting).value_or("");
    facts.contact = library.settings().get(business_contact_setting).value_or("");
    facts.date = date_of(local_now());
    return facts;
}

Reply written_wording(Library& library) {
    const Path file = write_consent_form_wording(library);
    return {{"The wording of the form is yours to change: " + file.string(), form_caution},
            {{"wording", file.string()}, {"caution", form_caution}}};
}

Reply form(Session& session, const FormOptions& options) {
    Library& library = session.library();
    if (options.write_wording) return written_wording(library);
    if (options.out.empty()) {
        throw WrongUse(
            "Name the PDF to write with --out, or write the wording with "
            "--write-wording.");
    }
    refuse_bad_pdf(session, options.out, options.replace);
    const FormFacts facts = form_facts(library, options);
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    const Document page =
        consent_sheet(form_blocks(consent_form_wording(library), facts), facts, *ruler, paper);
    write_pdf(page, *decoder, library.disk(), options.out);
    Reply reply{{"Written: " + options.out},
                {{"file", options.out},
                 {"pages", page.pages.size()},
                 {"client", facts.client},
                 {"caution", form_caution}}};
    if (facts.business.empty() || facts.contact.empty()) {
        reply.lines.emplace_back(
            "Who keeps the photos has to be filled in by hand: set 'business name' and 'business "
            "contact' with qturn settings.");
    }
    reply.lines.emplace_back(form_caution);
    return reply;
}

}  // namespace

void add_consent_paper_commands(CommandSet& commands) {
    const auto attached = std::make_shared<AttachOptions>();
    auto attach_command =
        commands.add({"consent attach",
                      "Copies a scan or a message into the library, for entries of the history.",
                      "qturn consent attach scan.pdf 12 13"},
                     [attached](Session& session) { return attach(session, *attached); });
    attach_command.argument("FILE", attached->file, "The scan or the message");
    attach_command.argument("ENTRIES", attached->entries, "Their numbers in the history");

    const auto options = std::make_shared<FormOptions>();
    auto command = commands.add(
        {"consent form",
         "Writes the form on which a client says what she allows, to print and to sign.",
         "qturn consent form 'Ada Lindqvist' --out form.pdf"},
        [options](Session& session) { return form(session, *options); });
    command.optional_argument("CLIENT", options->client,
                              "Name or number; without it her name is filled in by hand");
    command.option("--out FILE", options->out, "The PDF to write");
    command.option("--paper SIZE", options->paper,
                   "a4, a3, a5 or letter; unless named, the setting 'paper'");
    command.flag("--replace", options->replace, "Write over a file that is there");
    command.flag("--write-wording", options->write_wording,
                 "Write the wording into the library, as consent-form.txt, to be changed");
}

}  // namespace quarterturn
