#pragma once

#include "indexer/record/time.h"
#include "indexer/store/change_stamp.h"
#include "ui/shell/screen.h"

class QLayout;
class QVBoxLayout;

namespace quarterturn {

class AheadList;
class EndOfPage;
class PastList;
class RecordForm;

// The first screen: weddings and sittings by date, today's first, each with what it still
// lacks.
class ComingUpScreen : public Screen {
    Q_OBJECT
  public:
    explicit ComingUpScreen(Session& session);

    QString help() const override;
    void refresh() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QLayout* build_head();
    void remind();
    void show_reminders();
    void show_past();
    void show_empty(bool shown);
    void show_form(RecordForm* form);
    bool being_changed() const;

    Session& session_;
    QVBoxLayout* forms_;
    AheadList* ahead_;
    QVBoxLayout* reminders_;
    PastList* past_;
    EndOfPage* end_;
    QVBoxLayout* empty_place_;
    QWidget* empty_ = nullptr;
    QWidget* title_ = nullptr;
    bool nothing_ahead_ = false;
    bool has_reminded_ = false;
    bool waits_to_remind_ = false;
    ChangeStamp reminded_at_{.by_others = -1};
    Date reminded_on_{};
};

}  // namespace quarterturn
