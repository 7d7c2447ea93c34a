#include "indexer/sheet/contact_sheet.h"

#include "indexer/sheet/contact_content.h"
#include "indexer/sheet/heads.h"
#include "indexer/sheet/lay_out.h"

namespace quarterturn {
namespace {

SittingState sitting_state(Library& library, SittingId id) {
    SittingState state;
    const auto sitting = library.sittings().find(id);
    if (!sitting)
        throw StoreError("There is no such sitting. List the sittings to find its number.");
    state.sitting = *sitting;
    state.client = library.clients().find(sitting->client).value_or(Client{});
    if (sitting->wedding) state.wedding = library.weddings().find(*sitting->wedding);
    state.photos = library.photos().of_sitting(id);
    return state;
}

}  // namespace

Document contact_sheet(Library& library, Decoder& decoder, TextRuler& ruler, LookId look,
                       const SheetWishes& wishes) {
    SheetContent content = contact_content(look_state(library, look), wishes, library.folder());
    content.business_line = business_words(library.settings());
    const SheetStyle style = sheet_style(wishes.paper);
    find_heads(content, style, decoder, library.disk());
    return lay_out(content, style, ruler);
}

Document sitting_sheet(Library& library, TextRuler& ruler, SittingId sitting, Paper paper) {
    SheetContent content = sitting_content(sitting_state(library, sitting), library.folder());
    content.business_line = business_words(library.settings());
    return lay_out(content, sheet_style(paper), ruler);
}

}  // namespace quarterturn
