#include "indexer/sheet/client_sheet.h"

#include "indexer/sheet/bands.h"
#include "indexer/sheet/client_content.h"
#include "indexer/sheet/header.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/recipe_block.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

class ClientPages {
  public:
    explicit ClientPages(SheetFlow& flow) : flow_(flow) {}

    void put(const std::string& words) {
        put_paragraph(flow_, text_item(words, flow_.style().body_points));
    }

    void put(const TextSection& section) {
        put_section(flow_, section.heading);
        for (const std::string& line : section.lines) put(line);
    }

    void put(const LookSection& section) {
        put(section.look);
        flow_.down(flow_.style().space);
        if (section.recipe) put_recipe(flow_, *section.recipe, RecipeRoom::anywhere);
        for (const TextSection& change : section.changes) put(change);
    }

    void put(const std::vector<PhotoSection>& sections, const ClientRecord& record,
             const Path& folder) {
        if (sections.empty()) return put(TextSection{"Photos", {"No photo is of her."}});
        std::vector<SheetBand> bands;
        for (const PhotoSection& section : sections) {
            bands.push_back({"Photos: " + section.heading, {}});
            for (const Photo& photo : section.photos) {
                bands.back().cells.push_back(cell_of(photo, record, folder));
            }
        }
        const SheetStyle& style = flow_.style();
        const double height = wanted_cell_height(bands, style.column_width(style.frame_columns));
        put_bands(flow_, bands, {style.frame_columns, height, style.frame_points});
    }

  private:
    static SheetCell cell_of(const Photo& photo, const ClientRecord& record, const Path& folder) {
        SheetCell cell = frame_cell(photo, folder);
        const auto kept = record.kept_here.find(photo.id);
        if (kept == record.kept_here.end()) return cell;
        cell.photo.reset();
        cell.empty = "not shown here:\n" + kept->second;
        return cell;
    }

    SheetFlow& flow_;
};

SheetContent pages_of(const ClientRecord& record, const ClientSheetWishes& wishes) {
    SheetContent content;
    content.title = "Record of " + record.client.name;
    content.header.client = record.client.name;
    content.header.lines = {"All that is kept of her, " + long_date(wishes.day)};
    content.header.again = content.title;
    content.business_line = wishes.business_line;
    content.private_line = private_record;
    return content;
}

// Read like a letter, not hung up beside a mirror.
SheetStyle record_style(Paper paper) {
    SheetStyle style = sheet_style(paper);
    style.body_points = style.lead_points * 0.92;
    style.heading_points = style.lead_points * 1.15;
    style.text_columns = std::max(1, style.text_columns - 1);
    return style;
}

}  // namespace

Document client_sheet(const ClientRecord& record, TextRuler& ruler,
                      const ClientSheetWishes& wishes) {
    const SheetContent pages = pages_of(record, wishes);
    SheetFlow flow(pages, record_style(wishes.paper), ruler);
    put_header(flow, pages.header);
    ClientPages put(flow);
    if (!record.client.note.empty()) put.put(record.client.note);
    const ClientContent content = client_content(record);
    for (const TextSection& section : content.facts) put.put(section);
    for (const LookSection& look : content.looks) put.put(look);
    put.put(content.photos, record, wishes.library_folder);
    return flow.finish();
}

Document client_sheet(Library& library, const ClientRecord& record, TextRuler& ruler, Date day) {
    return client_sheet(record, ruler,
                        {usual_paper(library.settings()), day, library.folder(),
                         business_words(library.settings())});
}

}  // namespace quarterturn
