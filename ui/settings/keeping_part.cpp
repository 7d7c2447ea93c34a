#include "ui/settings/keeping_part.h"

#include <QComboBox>
#include <QPointer>

#include "indexer/store/library_settings.h"
#include "ui/shell/session.h"
#include "ui/shell/setting_edit.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::array offered_years{0, 1, 2, 3, 5, 7, 10, 15, 20};  // 0: until she erases them

QString years_words(int years) {
    return years == 0 ? KeepingPart::tr("until you erase them")
                      : KeepingPart::tr("%n year(s)", nullptr, years);
}

}  // namespace

KeepingPart::KeepingPart(Session& session)
    : SettingsPart(tr("How long looks are kept"),
                   tr("Counted from a client's last day with you, and for a client who comes again "
                      "from the last day of each look. What is older is proposed to you for "
                      "erasure; nothing is erased by itself.")),
      session_(session),
      years_(new QComboBox),
      look_(make_button(tr("Which those are"))),
      notice_(new Notice),
      found_words_(make_quiet({})),
      found_(make_column(1)) {
    years_->setAccessibleName(tr("How long looks are kept"));
    for (const int years : offered_years) offer(years);
    connect(years_, &QComboBox::activated, this, &KeepingPart::choose);
    connect(look_, &QPushButton::clicked, this, &KeepingPart::look_through);
    QHBoxLayout* row = make_row(3);
    row->addWidget(years_);
    row->addWidget(look_);
    row->addStretch();
    column()->addLayout(row);
    column()->addWidget(notice_);
    column()->addWidget(found_words_);
    column()->addLayout(found_);
    found_words_->hide();
}

void KeepingPart::offer(int years) {
    years_->addItem(years_words(years), years);
}

void KeepingPart::refresh() {
    const int years = keep_looks_years(session_.library().settings()).value_or(0);
    if (years_->findData(years) < 0) offer(years);
    years_->setCurrentIndex(years_->findData(years));
    look_->setEnabled(years > 0);
    // Who was erased meanwhile leads nowhere.
    const auto gone = std::erase_if(past_, [this](const PastKeeping& past) {
        Library& library = session_.library();
        return past.only ? !library.looks().find(past.only->id)
                         : !library.clients().find(past.client.id);
    });
    if (gone > 0) show_found(past_);
}

void KeepingPart::choose() {
    const int years = years_->currentData().toInt();
    past_.clear();
    empty_layout(found_);
    found_words_->hide();
    const bool kept = session_.change_records(
        change_setting(to_utf8(tr("changed how long looks are kept")), keep_looks_setting,
                       years > 0 ? std::to_string(years) : std::string()));
    if (!kept) refresh();
}

void KeepingPart::look_through() {
    notice_->say(tr("Looking through the clients…"));
    Job* job = session_.start<std::vector<PastKeeping>>(
        [today = session_.today()](Library& library, Job&) { return past_keeping(library, today); },
        [part = QPointer(this)](std::vector<PastKeeping> past) {
            if (!part) return;
            part->notice_->say({});
            part->show_found(std::move(past));
        });
    connect(job, &Job::failed, notice_, &Notice::say);
}

void KeepingPart::show_found(std::vector<PastKeeping> past) {
    past_ = std::move(past);
    empty_layout(found_);
    found_words_->setText(past_.empty()
                              ? tr("Nothing is that old.")
                              : tr("Older than that. On her page you see what would go, and erase "
                                   "it when you want to:"));
    found_words_->show();
    for (const PastKeeping& each : past_) add_client(each);
}

void KeepingPart::add_client(const PastKeeping& past) {
    const QString photos = tr("%n photo(s)", nullptr, static_cast<int>(past.photos));
    const QString client = isolated(from_utf8(past.client.name));
    //: a client, the day she was here last, looks and photos
    const QString of_her =
        tr("%1: last here on %2, %3, %4")
            .arg(client, shown(past.last), tr("%n look(s)", nullptr, static_cast<int>(past.looks)),
                 photos);
    //: a client, a look of hers, its last day, its photos
    const QString of_look = tr("%1, %2: last done on %3, %4");
    auto* link =
        new SentenceLink(past.only ? of_look.arg(client, isolated(from_utf8(past.only->name)),
                                                 shown(past.last), photos)
                                   : of_her);
    connect(link, &SentenceLink::clicked, this, [this, client = past.client.id] {
        session_.go_to({.moment = Moment::client_record, .client = client});
    });
    found_->addWidget(link);
}

}  // namespace quarterturn
