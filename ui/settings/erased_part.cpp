#include "ui/settings/erased_part.h"

#include <QPushButton>

#include "indexer/erasure/erase.h"
#include "indexer/store/erasure_table.h"
#include "ui/shell/session.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {

ErasedPart::ErasedPart(Session& session)
    : SettingsPart(tr("What was erased"),
                   tr("The day and the numbers, and nothing of whom. What it left to be looked at "
                      "stands here until that file is gone, or until you have looked at it.")),
      session_(session),
      erasures_(make_column(1)),
      left_(make_column(1)),
      looked_at_(make_button(tr("I have looked at all of it"))) {
    connect(looked_at_, &QPushButton::clicked, this, &ErasedPart::forget_left);
    QHBoxLayout* row = make_row(3);
    row->addWidget(looked_at_);
    row->addStretch();
    column()->addLayout(erasures_);
    column()->addLayout(left_);
    column()->addLayout(row);
}

void ErasedPart::refresh() {
    session_.attempt([this] {
        show_erasures();
        show_left();
    });
}

void ErasedPart::show_erasures() {
    empty_layout(erasures_);
    const std::vector<Erasure> all = ErasureTable(session_.library().database()).all();
    if (all.empty()) erasures_->addWidget(make_quiet(tr("Nothing was erased.")));
    for (const Erasure& erasure : all) {
        const QString looks = tr("%n look(s)", nullptr, static_cast<int>(erasure.looks));
        const QString photos = tr("%n photo(s)", nullptr, static_cast<int>(erasure.photos));
        //: a day, how many looks, how many photos
        const QString what =
            erasure.finished ? tr("On %1: %2 and %3.")
                             : tr("On %1: %2 and %3. It is not finished, and goes on by itself.");
        erasures_->addWidget(make_text(what.arg(shown(erasure.on), looks, photos)));
    }
}

void ErasedPart::show_left() {
    empty_layout(left_);
    QStringList to_remove;
    for (const std::string& path : ErasureTable(session_.library().database()).files_left()) {
        //: a file
        to_remove << tr("Still to be removed: %1").arg(from_utf8(path));
    }
    QStringList to_look_at;
    for (const ErasureLeft& left : left_by_erasures(session_.library())) {
        to_look_at << said_here(left.said.words);
    }
    looked_at_->setVisible(!to_look_at.isEmpty() && !session_.library().only_to_look());
    add_sentences(*left_, to_remove,
                  tr("See to their permissions: it goes on by itself when the "
                     "library is opened."));
    add_sentences(*left_, to_look_at, {});
}

void ErasedPart::forget_left() {
    session_.attempt([this] { forget_left_by_erasures(session_.library()); });
    refresh();
}

}  // namespace quarterturn
