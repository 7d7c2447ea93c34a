#pragma once

#include <QWidget>

namespace quarterturn {

class Notice;
class Session;

// Above all screens: what holds for as long as the library is open. Nothing while a screen stands
// alone, as a client may look then.
class StandingNotice : public QWidget {
    Q_OBJECT
  public:
    explicit StandingNotice(Session& session, QWidget* parent = nullptr);

    void refresh(bool alone);

  private:
    Session& session_;
    Notice* notice_;
};

}  // namespace quarterturn
