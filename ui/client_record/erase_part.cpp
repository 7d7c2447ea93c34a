#include "ui/client_record/erase_part.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPointer>
#include <QScrollArea>
#include <QTimer>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_buttons.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {

ErasePart::ErasePart(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(make_heading({})),
      words_(make_column(1)),
      beforehand_(make_column(1)),
      shared_(new QCheckBox(tr("Erase the photos of others that show her as well"))),
      question_(make_text({})),
      name_(new QLineEdit),
      notice_(new Notice),
      buttons_(new FormButtons(tr("Erase for good"))) {
    const Card card = make_card();
    card.column->setSpacing(space(3));
    card.column->addWidget(title_);
    card.column->addLayout(words_);
    card.column->addLayout(beforehand_);
    add_fields(*card.column);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(card.frame);
    hide();
}

void ErasePart::add_fields(QVBoxLayout& column) {
    name_->setMaximumWidth(space(90));
    column.addWidget(shared_);
    column.addWidget(make_quiet(tr(erasure_caution)));
    column.addWidget(question_);
    column.addWidget(name_);
    column.addWidget(notice_);
    column.addWidget(buttons_);
    connect(shared_, &QCheckBox::clicked, this, [this] {
        session_.attempt([this] {
            show_plan(plan_anew());
            look_beforehand();
        });
    });
    connect(buttons_, &FormButtons::kept, this, &ErasePart::erase);
    connect(buttons_, &FormButtons::left, this, &ErasePart::hide);
}

void ErasePart::ask(ClientId client) {
    ask_about(plan_erasure(session_.library(), client, SharedPhotos::stay));
}

void ErasePart::ask_look(LookId look) {
    ask_about(plan_look_erasure(session_.library(), look));
}

void ErasePart::ask_about(ErasurePlan plan) {
    shared_->setChecked(false);
    name_->clear();
    notice_->say({});
    const QString question =
        plan.only ? tr("The look's name, typed again") : tr("Her name, typed again");
    question_->setText(question);
    name_->setAccessibleName(question);
    show_plan(std::move(plan));
    look_beforehand();
    show();
    name_->setFocus();
    keep_name_in_sight();
}

// Nobody is to type into what she does not see.
void ErasePart::keep_name_in_sight() {
    QTimer::singleShot(0, this, [this] {
        for (QWidget* above = parentWidget(); above; above = above->parentWidget()) {
            auto* area = qobject_cast<QScrollArea*>(above);
            if (area && name_->hasFocus()) area->ensureWidgetVisible(buttons_);
        }
    });
}

void ErasePart::refresh(std::optional<ClientId> on_screen) {
    if (isHidden()) return;
    const bool there = on_screen == plan_->client.id &&
                       (!plan_->only || session_.library().looks().find(plan_->only->id));
    there ? show_plan(plan_anew()) : hide();
}

ErasurePlan ErasePart::plan_anew() const {
    Library& library = session_.library();
    if (plan_->only) return plan_look_erasure(library, plan_->only->id);
    return plan_erasure(library, plan_->client.id,
                        shared_->isChecked() ? SharedPhotos::go : SharedPhotos::stay);
}

void ErasePart::show_plan(ErasurePlan plan) {
    plan_ = std::move(plan);
    title_->setText(tr("Erase %1").arg(isolated(from_utf8(name_of_what_goes(*plan_)))));
    empty_layout(words_);
    for (const std::string& sentence : erasure_words(session_.library(), *plan_)) {
        words_->addWidget(make_text(said_here(sentence)));
    }
    for (const std::string& sentence : naming_words(named_by_others(session_.library(), *plan_))) {
        words_->addWidget(make_text(said_here(sentence)));
    }
    for (const Exported& exported : plan_->out_there) {
        //: the file of a picture that went out
        words_->addWidget(make_quiet(tr("Out there: %1").arg(from_utf8(exported.file))));
    }
    shared_->setVisible(!plan_->shared.empty() || shared_->isChecked());
}

// Not at every refresh, since it reads files.
void ErasePart::look_beforehand() {
    say_beforehand({tr("Looking through the library for what no record names…")});
    const int asked = ++asked_;
    const auto say = [part = QPointer(this), asked](const QStringList& sentences) {
        if (part && part->asked_ == asked) part->say_beforehand(sentences);
    };
    Job* job = session_.start<std::vector<std::string>>(
        [plan = *plan_](Library& library, Job&) { return left_beforehand(library, plan); },
        [say](const std::vector<std::string>& left) {
            QStringList sentences;
            for (const std::string& sentence : left) sentences << said_here(sentence);
            say(sentences);
        });
    connect(job, &Job::failed, this, [say](const QString& why) { say({why}); });
}

void ErasePart::say_beforehand(const QStringList& sentences) {
    empty_layout(beforehand_);
    add_sentences(*beforehand_, sentences, {});
    keep_name_in_sight();
}

void ErasePart::erase() {
    const std::string& name = name_of_what_goes(*plan_);
    if (to_utf8(name_->text().trimmed()) != name) {
        name_->setFocus();
        return notice_->say(tr("Nothing was erased: type the name as it is recorded, %1.")
                                .arg(isolated(from_utf8(name))));
    }
    if (session_.work()) {
        return notice_->say(
            tr("Something else is at work in the library: wait until it has ended, "
               "and press again."));
    }
    setEnabled(false);
    notice_->say(tr("Erasing…"));
    Job* job = session_.start<Erased>(
        [plan = *plan_, today = session_.today()](Library& library, Job&) {
            return quarterturn::erase(library, plan, today);
        },
        [part = QPointer(this)](const Erased& erased) {
            if (part) part->take(erased);
        });
    // What was erased before it failed is gone all the same.
    connect(job, &Job::failed, &session_, &Session::forget_past);
    connect(job, &Job::failed, notice_, &Notice::say);
    connect(job, &Job::ended, this, [this] { setEnabled(true); });
}

void ErasePart::take(const Erased& gone) {
    session_.forget_past();
    hide();
    QStringList sentences{
        (gone.erasure.finished
             //: looks, photos, and the day
             ? tr("Erased. What stays is that %1 and %2 went on %3.")
             //: looks, photos, and the day
             : tr("Erased from the records, but not finished. What stays is that %1 and %2 went on "
                  "%3."))
            .arg(tr("%n look(s)", nullptr, static_cast<int>(gone.erasure.looks)),
                 tr("%n photo(s)", nullptr, static_cast<int>(gone.erasure.photos)),
                 shown(gone.erasure.on))};
    for (const std::string& left : gone.left) sentences << said_here(left);
    for (const std::string& alike : gone.alike) sentences << said_here(alike);
    emit erased(sentences);
}

void ErasePart::keyPressEvent(QKeyEvent* event) {
    if (!buttons_->take_key(*event)) QWidget::keyPressEvent(event);
}

}  // namespace quarterturn
