#include "ui/portfolio_screen/ledger_part.h"

#include <QLineEdit>

#include "ui/consent/consent_words.h"
#include "ui/consent/take_down_list.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::size_t shown_at_first = 40;
constexpr int place_field_steps = 70;

}  // namespace

LedgerPart::LedgerPart(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), take_down_(new TakeDownList(session)) {
    const ScrollingPage page = make_scrolling_page();
    const Card ending = make_card();
    ending_card_ = ending.frame;
    ending_ = make_column(1);
    ending.column->addWidget(make_heading(tr("Ends within %n day(s)", nullptr, usual_days_before)));
    ending.column->addLayout(ending_);
    const Card out = make_card();
    out.column->setSpacing(space(3));
    out.column->addWidget(make_heading(tr("What went out")));
    exports_ = make_column(3);
    out.column->addLayout(exports_);
    page.column->addWidget(take_down_);
    page.column->addWidget(ending_card_);
    page.column->addWidget(out.frame);
    page.column->addStretch();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(page.scroll);
}

void LedgerPart::refresh() {
    Library& library = session_.library();
    const LedgerTasks tasks = ledger_tasks(library, session_.today(), usual_days_before);
    take_down_->show_tasks(tasks.to_take_down);
    std::vector<QString> sentences;
    for (const EndingSoon& ending : tasks.ending_soon) sentences.push_back(from_utf8(ending.words));
    show_ending(sentences);
    show_exports(library.ledger().all());
}

void LedgerPart::show_ending(const std::vector<QString>& sentences) {
    empty_layout(ending_);
    for (const QString& sentence : sentences) ending_->addWidget(make_text(sentence));
    ending_card_->setVisible(!sentences.empty());
}

// What is on screen stays as long as it is right, with what she is typing.
void LedgerPart::show_exports(std::vector<Exported> exports) {
    std::ranges::reverse(exports);
    if (exports_->count() > 0 && exports == shown_) return;
    shown_ = std::move(exports);
    empty_layout(exports_);
    if (shown_.empty()) exports_->addWidget(make_quiet(tr("Nothing went out yet.")));
    const std::size_t count = all_ ? shown_.size() : std::min(shown_.size(), shown_at_first);
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0) exports_->addWidget(make_hairline());
        exports_->addWidget(make_export(shown_[i]));
    }
    if (count == shown_.size()) return;
    QPushButton* more =
        make_button(tr("Show %n older one(s)", nullptr, static_cast<int>(shown_.size() - count)));
    connect(more, &QPushButton::clicked, this, [this] {
        all_ = true;
        shown_.clear();
        session_.attempt([this] { refresh(); });
    });
    exports_->addWidget(more, 0, Qt::AlignLeading);
}

QWidget* LedgerPart::make_export(const Exported& exported) {
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(4));
    QVBoxLayout* words = make_column(0);
    words->addWidget(make_text(export_words(exported)));
    words->addWidget(make_quiet(from_utf8(exported.file)));
    for (const std::string& place : exported.places) {
        //: where an exported picture was put
        words->addWidget(make_text(tr("Put at: %1").arg(from_utf8(place))));
    }
    if (exported.taken_down) {
        words->addWidget(make_text(tr("Taken down on %1").arg(shown(exported.taken_down->on))));
        if (!exported.taken_down->note.empty()) {
            words->addWidget(make_quiet(from_utf8(exported.taken_down->note)));
        }
    }
    parts->addLayout(words, 1);
    if (!exported.taken_down) parts->addWidget(make_place_field(exported.id), 0, Qt::AlignTop);
    return row;
}

QWidget* LedgerPart::make_place_field(ExportId id) {
    auto* field = new QLineEdit;
    field->setFixedWidth(space(place_field_steps));
    field->setPlaceholderText(tr("Where did you put it?"));
    field->setAccessibleName(tr("Where did you put export %1?").arg(id.value));
    connect(field, &QLineEdit::returnPressed, this, [this, field, id] {
        const std::string place = to_utf8(field->text().simplified());
        if (place.empty()) return;
        const bool kept = session_.attempt([&] { note_place(session_.library(), id, place); });
        if (kept) session_.touch();
    });
    return field;
}

}  // namespace quarterturn
