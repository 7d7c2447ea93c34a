#include "indexer/portfolio/pass_on.h"

#include "indexer/intake/heads.h"
#include "indexer/looks/passing_on.h"
#include "indexer/portfolio/leaving.h"
#include "indexer/sheet/photos_on.h"

namespace quarterturn {

PassedOn pass_on(Library& library, Decoder& decoder, const Document& document,
                 const std::function<std::vector<std::byte>()>& draw, const PassOnWishes& wishes,
                 LocalTime now) {
    look_for_heads_in(library, decoder, photos_on(library, document));
    const auto photos = photos_on(library, document);
    if (photos.empty()) {
        throw StoreError(
            "Nothing was written: no photo would stand on it, and for others it is of no use "
            "without one. Tag photos with the look and its angle first.");
    }
    PassedOn passed;
    const Date today = date_of(now);
    for (const auto& [photo, words] : against_passing_on(library, photos, wishes.use, today)) {
        passed.against.push_back({photo, words});
    }
    if (!passed.against.empty()) return passed;
    const std::vector<std::byte> bytes = draw();
    PhotoGate gate(library);
    std::vector<Exported> entries;
    for (const Photo& photo : photos) {
        const Verdict verdict = gate.may_go(photo, wishes.use, today);
        entries.push_back(entry_of(photo, wishes.use, verdict, now));
    }
    const Path file = std::filesystem::absolute(wishes.file).lexically_normal();
    for (const Exported& entry : write_into_ledger(
             library, std::move(entries), [&](ExportId) { return file; }, bytes,
             IfThere::replace)) {
        passed.exports.push_back(entry.id);
    }
    return passed;
}

}  // namespace quarterturn
