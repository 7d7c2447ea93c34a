#include "ui/consent/record_said.h"

#include <algorithm>

namespace quarterturn {

void record_said(Library& library, const std::vector<Said>& all, const Path& paper) {
    Transaction together(library.database());
    std::vector<ConsentId> ids;
    LocalTime now{};
    for (const Said& said : all) {
        for (const ConsentEntry& entry : record_consent(library, said.entry, said.uses)) {
            ids.push_back(entry.id);
        }
        now = said.entry.recorded_at;
    }
    if (!paper.empty()) attach_paper(library, paper, ids, now);
    together.commit();
}

std::vector<ToTakeDown> to_take_down_of(Library& library, ClientId client, Date today) {
    const auto entries = library.consents().of(client);
    const auto is_hers = [&](ConsentId id) {
        return std::ranges::find(entries, id, &ConsentEntry::id) != entries.end();
    };
    std::vector<ToTakeDown> tasks = ledger_tasks(library, today, 0).to_take_down;
    std::erase_if(tasks, [&](const ToTakeDown& task) {
        return std::ranges::none_of(task.exported.under, is_hers);
    });
    return tasks;
}

}  // namespace quarterturn
