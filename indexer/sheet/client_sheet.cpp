#include "indexer/sheet/client_sheet.h"

#include "indexer/rules/recipe_difference.h"
#include "indexer/sheet/bands.h"
#include "indexer/sheet/header.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/recipe_block.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double indent_mm = 4;

std::string in_one_line(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) add_part(text, "; ", line);
    return text.empty() ? "nothing" : text;
}

std::string wedding_line(const Wedding& wedding, ClientId client) {
    std::string text;
    for (const std::string& line : wedding_words(wedding)) add_part(text, ", ", line);
    if (!wedding.ready_by.empty()) add_part(text, ", ", "ready by " + wedding.ready_by);
    const std::string role = role_in(wedding, client);
    if (!role.empty()) add_part(text, ". ", "Her part: " + role);
    return text;
}

std::string moment_words(LocalTime time) {
    return long_date(date_of(time)) + ", " + clock_text(time);
}

std::string sign_off_line(const SignOff& sign_off) {
    const std::size_t photos = sign_off.seal.photos.size();
    std::string text = "Signed off " + moment_words(sign_off.signed_at) + ", " +
                       std::to_string(photos) +
                       (photos == 1 ? " photo sealed." : " photos sealed.");
    if (sign_off.reopened_at) {
        text += " Opened again " + moment_words(*sign_off.reopened_at) + ": " +
                sign_off.reopened_because;
    }
    return text;
}

class ClientPages {
  public:
    ClientPages(SheetFlow& flow, const ClientRecord& record, const Path& folder)
        : flow_(flow), record_(record), folder_(folder) {}

    void put_all() {
        put(record_.client.note);
        put_weddings();
        put_sittings();
        put_section(flow_, "Consents");
        for (const std::string& line : consent_lines(record_)) put(line);
        for (const LookRecord& each : record_.looks) put_look(each);
        put_photos();
    }

  private:
    void put(const std::string& words, double indent = 0, Tone tone = Tone::ink) {
        if (words.empty()) return;
        put_paragraph(flow_, text_item(words, flow_.style().body_points, false, tone), indent);
    }

    void put_strong(const std::string& words) {
        put_paragraph(flow_, text_item(words, flow_.style().body_points, true));
    }

    void put_weddings() {
        put_section(flow_, "Weddings");
        for (const Wedding& wedding : record_.weddings) {
            put(wedding_line(wedding, record_.client.id));
        }
        if (record_.weddings.empty()) put("No wedding is recorded.");
    }

    void put_sittings() {
        put_section(flow_, "Sittings");
        for (const Sitting& sitting : record_.sittings) {
            put(sitting_words(sitting));
            put(sitting.note, indent_mm, Tone::soft);
        }
        if (record_.sittings.empty()) put("No sitting is recorded.");
    }

    void put_look(const LookRecord& each) {
        put_section(flow_, "Look: " + look_words(each.look));
        for (const Sitting& sitting : record_.sittings) {
            const auto& worked_on = each.look.sittings;
            if (std::ranges::find(worked_on, sitting.id) == worked_on.end()) continue;
            put("Worked on: " + sitting_words(sitting));
        }
        for (const SignOff& sign_off : each.sign_offs) put(sign_off_line(sign_off));
        if (each.sign_offs.empty()) put("Not signed off.");
        put_recipes(each);
    }

    void put_recipes(const LookRecord& each) {
        if (each.recipes.empty()) put("No recipe is saved.");
        if (!each.recipes.empty()) {
            SheetRecipe recipe = recipe_words(each.recipes.back());
            recipe.heading += ", saved " + moment_words(each.recipes.back().saved_at);
            put_recipe(flow_, recipe);
        }
        if (each.draft) {
            const Recipe was = each.recipes.empty() ? Recipe{} : each.recipes.back().recipe;
            put_changes("Written since, not saved yet:", was, each.draft->recipe);
        }
        for (std::size_t i = each.recipes.size(); i > 1; --i) {
            put_changes("Changed by revision " + std::to_string(each.recipes[i - 1].number) +
                            ", saved " + moment_words(each.recipes[i - 1].saved_at) + ":",
                        each.recipes[i - 2].recipe, each.recipes[i - 1].recipe);
        }
    }

    void put_changes(const std::string& title, const Recipe& was, const Recipe& is) {
        put_strong(title);
        for (const ToldChange& change : told_changes(was, recipe_difference(was, is))) {
            put(change.what + ". Was: " + in_one_line(change.was) +
                    ". Is: " + in_one_line(change.is) + '.',
                indent_mm);
        }
    }

    SheetBand band_of(const std::string& name, std::optional<SittingId> sitting) {
        SheetBand band;
        band.name = name;
        for (const Photo& photo : record_.photos) {
            if (place_of(photo) == sitting) band.cells.push_back(frame_cell(photo, folder_));
        }
        return band;
    }

    // Her own sitting that the photo is of; nothing where it is of none, or of another client's.
    std::optional<SittingId> place_of(const Photo& photo) const {
        const auto of_photo = [&](const Sitting& sitting) {
            return photo.tags.sitting == sitting.id;
        };
        return std::ranges::any_of(record_.sittings, of_photo) ? photo.tags.sitting : std::nullopt;
    }

    void put_photos() {
        put_section(flow_, "Photos");
        if (record_.photos.empty()) return put("No photo is of her.");
        std::vector<SheetBand> bands;
        for (const Sitting& sitting : record_.sittings) {
            bands.push_back(band_of(sitting_words(sitting), sitting.id));
        }
        bands.push_back(band_of("Of no sitting of hers", std::nullopt));
        std::erase_if(bands, [](const SheetBand& band) { return band.cells.empty(); });
        const SheetStyle& style = flow_.style();
        const double height = wanted_cell_height(bands, style.column_width(style.frame_columns));
        put_bands(flow_, bands, {style.frame_columns, height, style.frame_points});
    }

    SheetFlow& flow_;
    const ClientRecord& record_;
    const Path& folder_;
};

SheetContent content_of(const ClientRecord& record, const ClientSheetWishes& wishes) {
    SheetContent content;
    content.title = "Record of " + record.client.name;
    content.header.client = record.client.name;
    content.header.lines = {"All that is kept of her, " + long_date(wishes.day)};
    content.header.again = content.title;
    content.business_line = wishes.business_line;
    content.private_line =
        "Private data of a person: keep it where nobody else can read it, and pass it on only as "
        "she has allowed.";
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
    const SheetContent content = content_of(record, wishes);
    SheetFlow flow(content, record_style(wishes.paper), ruler);
    put_header(flow, content.header);
    ClientPages(flow, record, wishes.library_folder).put_all();
    return flow.finish();
}

Document client_sheet(Library& library, const ClientRecord& record, TextRuler& ruler, Date day) {
    return client_sheet(record, ruler,
                        {usual_paper(library.settings()), day, library.folder(),
                         business_words(library.settings())});
}

}  // namespace quarterturn
