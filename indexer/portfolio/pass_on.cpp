#include "indexer/portfolio/pass_on.h"

#include "indexer/intake/heads.h"
#include "indexer/looks/passing_on.h"
#include "indexer/sheet/photos_on.h"

namespace quarterturn {

PassedOn pass_on(Library& library, Decoder& decoder, const Document& document,
                 const std::function<std::vector<std::byte>()>& draw, const PassOnWishes& wishes,
                 LocalTime now) {
    look_for_heads_in(library, decoder, photos_on(library, document));
    const auto photos = photos_on(library, document);
    PassedOn passed;
    passed.against = against_passing_on(library, photos, wishes.use, date_of(now));
    if (!passed.against.empty()) return passed;
    const std::vector<std::byte> bytes = draw();
    passed.exports = note_in_ledger(library, photos, wishes.use, now, wishes.file, bytes);
    replace_file(library.disk(), wishes.file, bytes);
    return passed;
}

}  // namespace quarterturn
