#include "ui/shell/import_progress.h"

#include "ui/widgets/words.h"

namespace quarterturn {

std::function<void(const ImportProgress&)> progress_to(Job& job) {
    return [&job](const ImportProgress& progress) {
        job.progress({progress.done, progress.total, from_utf8(progress.file.filename().native()),
                      progress.left});
    };
}

}  // namespace quarterturn
