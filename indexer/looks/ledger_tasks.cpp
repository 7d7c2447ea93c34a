#include <algorithm>
#include <set>

#include "indexer/looks/consents.h"
#include "indexer/looks/photo_gate.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

struct Within {
    Date first{};
    Date last{};

    bool holds(const std::optional<Date>& day) const {
        return day && *day >= first && *day <= last;
    }
};

// What the gate looks at of the photos that went out, read at once.
class WentOut {
  public:
    WentOut(Library& library, const std::vector<Exported>& exports)
        : photos_(photos_of(library, exports)),
          gate_(PhotoGate::for_these(library, photos_)),
          seen_(SomeRecords(library.database()).seen(ids())),
          credits_(SomeRecords(library.database()).credits(ids())) {}

    std::vector<std::string> reasons_to_take_down(const Exported& exported, Date today) {
        const auto photo = std::ranges::lower_bound(photos_, exported.photo, {}, &Photo::id);
        if (photo == photos_.end() || photo->id != exported.photo) {
            return {"The photo is no longer in the library."};
        }
        const auto credit = credits_.find(photo->id);
        PhotoToShow shown =
            gate_.to_show(*photo, seen_[photo->id],
                          credit == credits_.end() ? std::nullopt : std::optional(credit->second));
        if (exported.hair_only) shown.face_shows = false;
        std::vector<std::string> why;
        for (const Against& against : may_go(shown, exported.use, today).against) {
            why.push_back(against.words);
        }
        return why;
    }

  private:
    static std::vector<Photo> photos_of(Library& library, const std::vector<Exported>& exports) {
        std::vector<PhotoId> ids;
        for (const Exported& exported : exports) ids.push_back(exported.photo);
        std::vector<Photo> photos = library.photos().these_also_in_bin(ids);
        std::ranges::sort(photos, {}, &Photo::id);
        return photos;
    }

    std::vector<PhotoId> ids() const {
        std::vector<PhotoId> ids;
        for (const Photo& photo : photos_) ids.push_back(photo.id);
        return ids;
    }

    std::vector<Photo> photos_;  // by their number
    PhotoGate gate_;
    std::map<PhotoId, Seen> seen_;
    std::map<PhotoId, Credit> credits_;
};

std::vector<EndingSoon> consents_ending(Library& library, const Within& days) {
    SomeRecords records(library.database());
    const auto clients = records.clients_of_consents_until(days.first, days.last);
    std::map<ClientId, std::vector<ConsentEntry>> said;
    for (ConsentEntry& entry : records.consents(clients)) {
        said[entry.client].push_back(std::move(entry));
    }
    std::vector<EndingSoon> ending;
    for (const Client& client : records.clients(clients)) {
        const auto& entries = said[client.id];
        for (const Use use : all_uses) {
            const StandingConsent consent = consent_on(entries, use, days.first);
            if (consent.standing != Standing::granted) continue;
            if (!days.holds(consent.entry->until)) continue;
            ending.push_back({*consent.entry->until, client.name + " allows to be shown " +
                                                         std::string(in_words(use)) + " until " +
                                                         iso_text(*consent.entry->until) + "."});
        }
    }
    return ending;
}

// Each licence once, however many photos it is for.
std::vector<EndingSoon> licences_ending(Library& library, const Within& days) {
    std::map<std::pair<Date, std::string>, int> photos;
    const auto ending_ones = SomeRecords(library.database()).credits_until(days.first, days.last);
    for (const auto& [photo, credit] : ending_ones) {
        const bool licensed = credit.whose == Whose::photographer && !credit.licensed.empty();
        if (licensed && days.holds(credit.until)) ++photos[{*credit.until, credit.name}];
    }
    std::vector<EndingSoon> ending;
    for (const auto& [licence, count] : photos) {
        ending.push_back({licence.first, "The licence of " + licence.second + " for " +
                                             std::to_string(count) +
                                             (count == 1 ? " photo" : " photos") + " ends on " +
                                             iso_text(licence.first) + "."});
    }
    return ending;
}

// The other entries of the same file that are still out there.
std::vector<Exported> others_of_file(Library& library, ExportId id) {
    std::vector<Exported> entries;
    const auto named = library.ledger().find(id);
    if (!named) return entries;
    for (Exported& each : library.ledger().all()) {
        const bool same = each.file == named->file && each.sha256 == named->sha256;
        if (same && each.id != id && !each.taken_down) entries.push_back(std::move(each));
    }
    return entries;
}

}  // namespace

void tick_off(Library& library, ExportId id, const TakenDown& taken_down) {
    Transaction all_or_none(library.database());
    const auto others = others_of_file(library, id);
    library.ledger().take_down(id, taken_down);
    for (const Exported& each : others) library.ledger().take_down(each.id, taken_down);
    library.history().stop_at("ticked off that a picture was taken down");
    all_or_none.commit();
}

void tick_off_all(Library& library, std::span<const ExportId> ids, const TakenDown& taken_down) {
    Transaction all_or_none(library.database());
    std::set<ExportId> ticked;  // with their files
    for (const ExportId id : ids) {
        if (ticked.contains(id)) continue;
        for (const Exported& each : others_of_file(library, id)) ticked.insert(each.id);
        ticked.insert(id);
        tick_off(library, id, taken_down);
    }
    all_or_none.commit();
}

void note_place(Library& library, ExportId id, const std::string& place) {
    Transaction all_or_none(library.database());
    library.ledger().add_place(id, place);
    for (const Exported& each : others_of_file(library, id)) {
        library.ledger().add_place(each.id, place);
    }
    library.history().stop_at("noted where a picture was put");
    all_or_none.commit();
}

LedgerTasks ledger_tasks(Library& library, Date today, int within_days) {
    LedgerTasks tasks;
    auto exports = SomeRecords(library.database()).exports_out_there();
    WentOut out(library, exports);
    for (Exported& exported : exports) {
        auto why = out.reasons_to_take_down(exported, today);
        if (!why.empty()) tasks.to_take_down.push_back({std::move(exported), std::move(why)});
    }
    const Within days{today, std::chrono::sys_days(today) + std::chrono::days(within_days)};
    tasks.ending_soon = consents_ending(library, days);
    std::ranges::move(licences_ending(library, days), std::back_inserter(tasks.ending_soon));
    std::ranges::stable_sort(tasks.ending_soon, {}, &EndingSoon::on);
    return tasks;
}

}  // namespace quarterturn
