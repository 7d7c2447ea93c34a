#pragma once
// What a client allows, recorded and withdrawn, with the papers that show it.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/hair_only.h"
#include "indexer/record/ledger.h"
#include "indexer/rules/gate.h"
#include "indexer/store/library.h"

namespace quarterturn {

// What is recorded for these uses; the entry's own use is not looked at.
struct SaidOfUses {
    ConsentEntry entry;
    std::vector<Use> uses;
};

// Records one entry for each use and hangs the paper on all of them, or nothing of it; answers them
// as recorded. An empty path: without a paper. What is recorded stays: undo stops there. Throws
// what attach_paper() throws, and StoreError for what a child grants by herself; she may decline
// and withdraw.
std::vector<ConsentEntry> record_said(Library& library, const std::vector<SaidOfUses>& all,
                                      const Path& paper);
std::vector<ConsentEntry> record_consent(Library& library, const ConsentEntry& entry,
                                         std::span<const Use> uses);

// The uses of which there is something to withdraw: granted on whatever day, also from a later one.
std::vector<Use> uses_to_withdraw(Library& library, ClientId client);

// Copies a file into the library, under consents/, and hangs it on the entries; undo stops there.
// The file itself is only read. Throws StoreError when it is empty or larger than 64 MiB, and
// DiskError.
ConsentPaper attach_paper(Library& library, const Path& file, std::span<const ConsentId> entries,
                          LocalTime now);

// A sentence when the paper is no longer the file that was attached; empty when it is.
std::string problem_with_paper(Library& library, const ConsentPaper& paper);

// The same of all papers that hang on these entries: sentences.
std::vector<std::string> problems_with_papers(Library& library, std::span<const ConsentId> entries);

// That a picture is out there no longer, or where it was put: said of all entries of its file,
// since a picture of a pair has one for each photo. Undo stops there. Both throw StoreError.
void tick_off(Library& library, ExportId id, const TakenDown& taken_down);
// All of them, or none where one was taken down before.
void tick_off_all(Library& library, std::span<const ExportId> ids, const TakenDown& taken_down);
void note_place(Library& library, ExportId id, const std::string& place);

// How long before it ends she is told of a consent or a licence: time enough to ask anew.
inline constexpr int usual_days_before = 60;

struct EndingSoon {
    Date on{};          // the last day
    std::string words;  // a sentence
};

struct ToTakeDown {
    Exported exported;
    std::vector<std::string> why;  // sentences of the gate
};

struct LedgerTasks {
    std::vector<ToTakeDown> to_take_down;  // in the order they went out
    std::vector<EndingSoon> ending_soon;   // the soonest first
};

// What is still out there and may not be any longer, and which consents and licences end within so
// many days.
LedgerTasks ledger_tasks(Library& library, Date today, int within_days);

}  // namespace quarterturn
