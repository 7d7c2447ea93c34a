#pragma once

#include <QPointer>

#include "indexer/sheet/page.h"
#include "indexer/store/library.h"
#include "ui/shell/screen.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class ClientSearch;
class EmptyPage;
class HistoryCard;
class Notice;
class SaidForm;
class SentenceLink;
class Session;
class SignPage;
class TakeDownList;
class UseRow;
class WaysOut;

// What one client allows, use by use; the form she signs; and all that she ever said of it.
class ConsentScreen : public Screen {
    Q_OBJECT
  public:
    explicit ConsentScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void save_form_to(const Path& file);  // as PDF

  private:
    void build();
    QWidget* build_page();
    QLayout* build_buttons();
    QWidget* build_uses();
    void show_client(const Client& client);
    void show_lacks_of_form();
    void ask(std::vector<Use> uses, ConsentSaid said, UseRow& below);
    void ask_to_withdraw_all();
    void close_form();
    void sign();
    void leave_signing();
    Document form_pages(Library& library) const;
    void ask_where();

    Session& session_;
    std::optional<ClientId> client_;
    std::optional<Use> asked_about_;  // when she was led here
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* page_;
    SignPage* sign_;
    ClientSearch* search_;
    QLabel* title_;
    QLabel* age_;
    SentenceLink* lacks_;
    QPushButton* withdraw_all_;
    Notice* notice_;
    WaysOut* ways_;
    TakeDownList* take_down_;
    QVBoxLayout* uses_;
    std::vector<UseRow*> rows_;
    QPointer<SaidForm> form_;
    UseRow* form_of_ = nullptr;
    HistoryCard* history_;
};

}  // namespace quarterturn
