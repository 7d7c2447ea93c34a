#include "ui/settings/erased_part.h"

#include "indexer/erasure/erase.h"
#include "indexer/store/erasure_table.h"
#include "ui/shell/session.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

ErasedPart::ErasedPart(Session& session)
    : SettingsPart(tr("What was erased"),
                   tr("The day and the numbers, and nothing of whom. What it left to be looked at "
                      "stands here until that file is gone.")),
      session_(session),
      erasures_(make_column(1)),
      left_(make_column(1)) {
    column()->addLayout(erasures_);
    column()->addLayout(left_);
}

void ErasedPart::refresh() {
    session_.attempt([this] { show_erasures(); });
}

void ErasedPart::show_erasures() {
    empty_layout(erasures_);
    empty_layout(left_);
    ErasureTable table(session_.library().database());
    for (const Erasure& erasure : table.all()) {
        const QString looks = tr("%n look(s)", nullptr, static_cast<int>(erasure.looks));
        const QString photos = tr("%n photo(s)", nullptr, static_cast<int>(erasure.photos));
        //: a day, how many looks, how many photos
        const QString what =
            erasure.finished ? tr("On %1: %2 and %3.")
                             : tr("On %1: %2 and %3. It is not finished, and goes on by itself.");
        erasures_->addWidget(make_text(what.arg(shown(erasure.on), looks, photos)));
    }
    if (erasures_->isEmpty()) erasures_->addWidget(make_quiet(tr("Nothing was erased.")));
    for (const std::string& path : table.files_left()) {
        //: a file
        left_->addWidget(make_quiet(tr("Still to be removed: %1").arg(from_utf8(path))));
    }
    for (const ErasureLeft& left : left_by_erasures(session_.library())) {
        left_->addWidget(make_quiet(from_utf8(left.said.words)));
    }
}

}  // namespace quarterturn
