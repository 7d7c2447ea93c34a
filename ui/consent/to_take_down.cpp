#include "ui/consent/to_take_down.h"

#include <algorithm>

namespace quarterturn {

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
