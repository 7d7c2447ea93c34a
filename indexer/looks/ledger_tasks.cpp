#include <algorithm>
#include <set>

#include "indexer/looks/consents.h"

namespace quarterturn {
namespace {

bool ends_within(const std::optional<Date>& last, Date today, int days) {
    using std::chrono::sys_days;
    return last && *last >= today && sys_days(*last) <= sys_days(today) + std::chrono::days(days);
}

std::vector<std::string> reasons_to_take_down(Library& library, PhotoGate& gate,
                                              const Exported& exported, Date today) {
    const auto photo = library.photos().find_also_in_bin(exported.photo);
    if (!photo) return {"The photo is no longer in the library."};
    std::vector<std::string> why;
    const Verdict verdict = exported.hair_only ? gate.may_go_hair_only(*photo, exported.use, today)
                                               : gate.may_go(*photo, exported.use, today);
    for (const Against& against : verdict.against) {
        why.push_back(against.words);
    }
    return why;
}

std::vector<EndingSoon> consents_ending(Library& library, Date today, int days) {
    std::map<ClientId, std::vector<ConsentEntry>> said;
    for (ConsentEntry& entry : library.consents().all()) {
        said[entry.client].push_back(std::move(entry));
    }
    std::vector<EndingSoon> ending;
    for (const Client& client : library.clients().all()) {
        const auto& entries = said[client.id];
        for (const Use use : all_uses) {
            const StandingConsent consent = consent_on(entries, use, today);
            if (consent.standing != Standing::granted) continue;
            if (!ends_within(consent.entry->until, today, days)) continue;
            ending.push_back({*consent.entry->until, client.name + " allows to be shown " +
                                                         std::string(in_words(use)) + " until " +
                                                         iso_text(*consent.entry->until) + "."});
        }
    }
    return ending;
}

// Each licence once, however many photos it is for.
std::vector<EndingSoon> licences_ending(Library& library, Date today, int days) {
    std::map<std::pair<Date, std::string>, int> photos;
    for (const auto& [photo, credit] : library.credits().all()) {
        const bool licensed = credit.whose == Whose::photographer && !credit.licensed.empty();
        if (licensed && ends_within(credit.until, today, days)) {
            ++photos[{*credit.until, credit.name}];
        }
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
    PhotoGate gate(library);
    for (Exported& exported : library.ledger().all()) {
        if (exported.taken_down) continue;
        auto why = reasons_to_take_down(library, gate, exported, today);
        if (!why.empty()) tasks.to_take_down.push_back({std::move(exported), std::move(why)});
    }
    tasks.ending_soon = consents_ending(library, today, within_days);
    std::ranges::move(licences_ending(library, today, within_days),
                      std::back_inserter(tasks.ending_soon));
    std::ranges::stable_sort(tasks.ending_soon, {}, &EndingSoon::on);
    return tasks;
}

}  // namespace quarterturn
