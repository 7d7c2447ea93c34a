#include "indexer/sheet/ledger_sheet.h"

#include "indexer/record/date_words.h"
#include "indexer/sheet/header.h"
#include "indexer/sheet/running_text.h"

namespace quarterturn {
namespace {

std::string number_list(const std::vector<ConsentId>& ids) {
    std::string list;
    for (const ConsentId id : ids) list += (list.empty() ? "" : ", ") + std::to_string(id.value);
    return list;
}

std::vector<std::string> lines_of(const Exported& exported) {
    std::vector<std::string> lines{exported.file, "SHA-256 " + exported.sha256};
    for (const std::string& place : exported.places) lines.push_back("Put: " + place);
    if (!exported.under.empty()) {
        lines.push_back("Under consent " + number_list(exported.under) +
                        (exported.hair_only ? ", hair only" : ""));
    }
    if (exported.taken_down) {
        const TakenDown& down = *exported.taken_down;
        lines.push_back("Taken down on " + iso_text(down.on) +
                        (down.note.empty() ? "" : ": " + down.note));
    }
    return lines;
}

std::string title_of(const Exported& exported) {
    const std::string photo = exported.photo_name.empty() ? "erased photo" : exported.photo_name;
    return std::to_string(exported.id.value) + " · " + iso_text(date_of(exported.at)) + " · " +
           std::string(word(exported.use)) + " · " + photo;
}

void put_export(SheetFlow& flow, const Exported& exported) {
    put_section(flow, title_of(exported));
    for (const std::string& line : lines_of(exported)) {
        put_paragraph(flow, text_item(line, flow.style().body_points));
    }
}

}  // namespace

Document ledger_sheet(std::span<const Exported> exports, TextRuler& ruler,
                      const LedgerSheetWishes& wishes) {
    SheetContent content;
    content.title = "Ledger";
    content.header.client = "What went out";
    content.header.lines = {"As it stood on " + long_date(wishes.day)};
    content.header.again = "What went out";
    content.business_line = wishes.business_line;
    content.private_line = "A record of what was told, and no legal advice.";
    SheetFlow flow(content, sheet_style(wishes.paper), ruler);
    put_header(flow, content.header);
    if (exports.empty()) put_paragraph(flow, text_item("Nothing of it.", flow.style().body_points));
    for (const Exported& exported : exports) put_export(flow, exported);
    return flow.finish();
}

}  // namespace quarterturn
