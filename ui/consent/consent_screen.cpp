#include "ui/consent/consent_screen.h"

#include <QApplication>
#include <QStackedWidget>
#include <QTimer>

#include "indexer/looks/exported_record.h"
#include "indexer/sheet/consent_sheet.h"
#include "indexer/store/library_settings.h"
#include "ui/client_search/client_search.h"
#include "ui/consent/consent_words.h"
#include "ui/consent/history_card.h"
#include "ui/consent/said_form.h"
#include "ui/consent/sign_page.h"
#include "ui/consent/take_down_list.h"
#include "ui/consent/to_take_down.h"
#include "ui/consent/use_row.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

Document consent_form(Library& library, const std::string& client, Date today) {
    FormFacts facts;
    facts.client = client;
    facts.business = library.settings().get(business_name_setting).value_or("");
    facts.contact = library.settings().get(business_contact_setting).value_or("");
    facts.date = today;
    const auto ruler = make_text_ruler();
    return consent_sheet(form_blocks(consent_form_wording(library), facts), facts, *ruler,
                         usual_paper(library.settings()));
}

// Scrolls to what has come on to the page once it is laid out.
void bring_into_view(QWidget& widget) {
    QTimer::singleShot(0, &widget, [&widget] {
        for (QWidget* above = widget.parentWidget(); above; above = above->parentWidget()) {
            if (auto* area = qobject_cast<QScrollArea*>(above)) {
                return area->ensureWidgetVisible(&widget, 0, space(4));
            }
        }
    });
}

}  // namespace

ConsentScreen::ConsentScreen(Session& session) : session_(session) {
    build();
}

QString ConsentScreen::help() const {
    return tr(
        "What a client allows, for each use: what is true today, and the buttons that change it. "
        "What was not asked counts as no. She signs on the screen, or on the form that you save or "
        "print. Withdrawing is as easy as granting, for one use or for all, and says at once what "
        "is out there to be taken down.\n\n"
        "The history is only added to: Undo leaves it alone. When something was recorded by "
        "mistake, record what is so.");
}

void ConsentScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here stands what each client allows to be shown of her, and where. "
                              "There is no client yet."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    page_ = build_page();
    sign_ = new SignPage(session_);
    connect(sign_, &SignPage::done, this, &ConsentScreen::leave_signing);
    for (QWidget* page : {static_cast<QWidget*>(empty_), page_, static_cast<QWidget*>(sign_)}) {
        pages_->addWidget(page);
    }
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* ConsentScreen::build_page() {
    const ScrollingPage page = make_scrolling_page();
    search_ = new ClientSearch(session_, tr("What %1 allows"));
    connect(search_, &ClientSearch::chosen, this, [this](ClientId client) {
        session_.go_to({.moment = Moment::consent, .client = client});
    });
    title_ = make_title({});
    age_ = make_quiet({});
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    lacks_ = new SentenceLink(
        tr("The form leaves a line for who keeps the photos and how you are reached: set your "
           "business and its contact."));
    connect(lacks_, &SentenceLink::clicked, this,
            [this] { session_.go_to({.moment = Moment::settings}); });
    take_down_ = new TakeDownList(session_);
    history_ = new HistoryCard(session_);
    page.column->addWidget(search_);
    page.column->addWidget(title_);
    page.column->addWidget(age_);
    page.column->addLayout(build_buttons());
    page.column->addWidget(lacks_);
    page.column->addWidget(notice_);
    page.column->addWidget(take_down_);
    page.column->addWidget(build_uses());
    page.column->addWidget(make_quiet(consent_caution_words()));
    page.column->addWidget(history_);
    page.column->addStretch();
    return page.scroll;
}

QLayout* ConsentScreen::build_buttons() {
    auto* row = new FlowLayout(space(2));
    QPushButton* sign = make_next_button(tr("Sign on the screen"));
    QPushButton* pdf = make_button(tr("Save the form as PDF…"));
    QPushButton* paper = make_button(tr("Print the form…"));
    withdraw_all_ = make_button(tr("Withdraw everything…"));
    connect(sign, &QPushButton::clicked, this, &ConsentScreen::sign);
    connect(pdf, &QPushButton::clicked, this, &ConsentScreen::ask_where);
    connect(paper, &QPushButton::clicked, this, [this] {
        session_.attempt([this] {
            ways_->ask_and_print(form_pages(session_.library()), tr("Print the consent form"));
        });
    });
    connect(withdraw_all_, &QPushButton::clicked, this, &ConsentScreen::ask_to_withdraw_all);
    for (QPushButton* button : {sign, pdf, paper, withdraw_all_}) row->addWidget(button);
    return row;
}

QWidget* ConsentScreen::build_uses() {
    const Card card = make_card();
    card.column->setSpacing(0);
    uses_ = card.column;
    for (const Use use : all_uses) {
        auto* row = new UseRow(use);
        connect(row, &UseRow::asked, this,
                [this, row](Use about, ConsentSaid said) { ask({about}, said, *row); });
        if (!rows_.empty()) uses_->addWidget(make_hairline());
        uses_->addWidget(row);
        rows_.push_back(row);
    }
    return card.frame;
}

void ConsentScreen::arrive(const Place& place) {
    if (place.client && place.client != client_) close_form();
    if (place.client) client_ = place.client;
    asked_about_ = place.use;
    pages_->setCurrentWidget(page_);
    notice_->say({});
}

void ConsentScreen::refresh() {
    Library& library = session_.library();
    if (!client_ || !library.clients().find(*client_)) {
        const auto clients = library.clients().all();
        client_.reset();
        if (!clients.empty()) client_ = clients.front().id;
    }
    if (!client_) return pages_->setCurrentWidget(empty_);
    if (pages_->currentWidget() == sign_) return;  // what she answers stays
    pages_->setCurrentWidget(page_);
    search_->show_names(client_);
    show_client(*library.clients().find(*client_));
    if (const auto use = std::exchange(asked_about_, std::nullopt)) {
        ask({*use}, ConsentSaid::granted, *rows_[static_cast<std::size_t>(*use)]);
    }
}

void ConsentScreen::show_client(const Client& client) {
    Library& library = session_.library();
    const Date today = session_.today();
    const auto entries = library.consents().of(client.id);
    //: a client's name
    title_->setText(tr("What %1 allows").arg(isolated(from_utf8(client.name))));
    //: a day
    QString told = tr("Today, %1. What is not granted counts as no.").arg(shown(today));
    if (const auto age = age_on(entries, today)) {
        told += QLatin1Char(' ') + tr("Aged %1 when it was told last.").arg(shown(*age));
    }
    if (is_child_on(entries, today)) {
        told += QLatin1Char(' ') + tr("A parent or guardian decides, and she is asked too.");
    }
    age_->setText(told);
    bool something_stands = false;
    for (UseRow* row : rows_) {
        const StandingConsent consent = consent_on(entries, row->use(), today);
        row->show_standing(consent);
        something_stands |= consent.entry && consent.entry->said == ConsentSaid::granted;
    }
    withdraw_all_->setEnabled(something_stands);
    show_lacks_of_form();
    take_down_->show_tasks(to_take_down_of(library, client.id, today));
    history_->show_entries(entries);
}

void ConsentScreen::show_lacks_of_form() {
    SettingsTable settings = session_.library().settings();
    const bool name = !settings.get(business_name_setting).value_or("").empty();
    const bool contact = !settings.get(business_contact_setting).value_or("").empty();
    lacks_->setVisible(!name || !contact);
}

void ConsentScreen::ask(std::vector<Use> uses, ConsentSaid said, UseRow& below) {
    close_form();
    const auto client = session_.library().clients().find(*client_);
    if (!client) return;
    form_ = new SaidForm(session_, {*client, said, std::move(uses)});
    form_of_ = &below;
    connect(form_, &SaidForm::done, this, [this] {
        UseRow* row = form_of_;
        const bool had_keyboard = form_ && form_->isAncestorOf(QApplication::focusWidget());
        close_form();
        if (had_keyboard && row) row->button(ConsentSaid::granted).setFocus();
    });
    uses_->insertWidget(uses_->indexOf(&below) + 1, form_);
    form_->show();
    form_->setFocus();
    bring_into_view(*form_);
}

void ConsentScreen::ask_to_withdraw_all() {
    session_.attempt([this] {
        auto uses = uses_to_withdraw(session_.library(), *client_);
        if (!uses.empty()) ask(std::move(uses), ConsentSaid::withdrawn, *rows_.front());
    });
}

void ConsentScreen::close_form() {
    if (!form_) return;
    form_->hide();
    form_->deleteLater();
    form_ = nullptr;
    form_of_ = nullptr;
}

void ConsentScreen::sign() {
    session_.attempt([this] {
        const auto client = session_.library().clients().find(*client_);
        if (!client) return;
        close_form();
        sign_->show_client(*client);
        pages_->setCurrentWidget(sign_);
    });
}

void ConsentScreen::leave_signing() {
    pages_->setCurrentWidget(page_);
    session_.attempt([this] { refresh(); });
}

Document ConsentScreen::form_pages(Library& library) const {
    const auto client = library.clients().find(*client_);
    return consent_form(library, client ? client->name : std::string(), session_.today());
}

void ConsentScreen::ask_where() {
    const auto client = session_.library().clients().find(*client_);
    const std::string name = client ? client->name : std::string();
    const auto file = ways_->ask_file(tr("Save the consent form"), portable_name("Consent " + name),
                                      QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_form_to(*file);
}

void ConsentScreen::save_form_to(const Path& file) {
    const auto client = session_.library().clients().find(*client_);
    ways_->save([name = client ? client->name : std::string(), today = session_.today()](
                    Library& library) { return consent_form(library, name, today); },
                file);
}

}  // namespace quarterturn
