#include "ui/contact_sheet/sheet_wish.h"

#include "indexer/disk/lines_by_reason.h"
#include "indexer/looks/exported_record.h"
#include "indexer/rules/sign_off.h"
#include "indexer/sheet/photos_on.h"
#include "ui/painter/paint_page.h"

namespace quarterturn {
namespace {

std::string records_of_photo(const Photo& photo) {
    std::string text = photo.file.path + sealed_tags(photo.tags) + photo.tags.accepted_because;
    if (photo.moment) text += iso_text(*photo.moment);
    return text + '\n';
}

std::string records_of_look(Library& library, LookId look) {
    const LookState state = look_state(library, look);
    std::string text = state.client.name + '\n' + state.look.name + '\n';
    for (const Photo& photo : state.photos) text += records_of_photo(photo);
    for (const CoverageLine& line : state.coverage.lines) {
        text += shot_text(line.wanted.shot) + std::string(word(line.verdict)) + line.waived_because;
    }
    if (state.recipe) text += recipe_json(state.recipe->recipe);
    if (state.sign_off) text += iso_text(state.sign_off->signed_at);
    for (const std::string& change : state.changes_since) text += change;
    if (state.wedding) text += state.wedding->name + iso_text(state.wedding->date);
    return text;
}

}  // namespace

bool SheetWish::same_as(const SheetWish& other) const {
    return look == other.look && sitting == other.sitting && wishes.paper == other.wishes.paper &&
           wishes.during == other.wishes.during && wishes.whom == other.wishes.whom;
}

Document laid_out(Library& library, Decoder& decoder, const SheetWish& wish) {
    const auto ruler = make_text_ruler();
    if (wish.sitting) {
        return sitting_sheet(library, *ruler, *wish.sitting, wish.wishes.paper, wish.wishes.whom);
    }
    return contact_sheet(library, decoder, *ruler, wish.look, wish.wishes);
}

DrawnSheet drawn(Document document, Decoder& decoder, FileSystem& disk, int pixels) {
    DrawnSheet sheet{std::move(document), {}, {}};
    for (const Page& page : sheet.document.pages) {
        const double dpi = pixels / std::max(page.size.width, page.size.height) * 25.4;
        const auto pictures = pictures_of(page, dpi, decoder, disk);
        sheet.pages.push_back(page_image(page, pictures, dpi));
        const auto problems = problems_of(page, pictures);
        sheet.problems.insert(sheet.problems.end(), problems.begin(), problems.end());
    }
    return sheet;
}

std::function<Document(Library&)> own_sheet(const Document& document, Date today) {
    return [document, today](Library& library) { return for_own_work(library, document, today); };
}

Written write_for_others(Library& library, Decoder& decoder, const Document& document,
                         const PassOnWishes& wishes, LocalTime now) {
    const std::string name = wishes.file.string();
    if (!picture_format(wishes.file).empty()) {
        throw StoreError(name + ": a sheet for others is written as .pdf, as a whole.");
    }
    DrawnPdf pdf;
    const auto draw = [&] {
        pdf = draw_pdf(document, decoder, library.disk());
        return std::vector(pdf.span().begin(), pdf.span().end());
    };
    const PassedOn passed = pass_on(library, decoder, document, draw, wishes, now);
    if (passed.against.empty()) return {{wishes.file}, std::move(pdf.problems)};
    std::string all = "Nothing was written, since some of its photos may not go:";
    for (const std::string& line : lines_by_reason(passed.against)) all += "\n" + line;
    throw StoreError(all);
}

std::string records_of(Library& library, const SheetWish& wish) {
    std::string text = library.settings().get(business_name_setting).value_or("") +
                       library.settings().get(business_line_setting).value_or("");
    if (!wish.sitting) return text + records_of_look(library, wish.look);
    for (const Photo& photo : library.photos().of_sitting(*wish.sitting)) {
        text += records_of_photo(photo);
    }
    return text;
}

std::string file_name(Library& library, LookId look) {
    const auto found = library.looks().find(look);
    return portable_name(found ? found->name : "sheet");
}

}  // namespace quarterturn
